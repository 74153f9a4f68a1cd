import { describe, expect, it } from "vitest";
import { draftTotal, purchaseDrafts } from "#app/this-week/purchase-draft.ts";
import { amountOfUnits } from "#lib/units/amount";
import { day } from "#lib/units/day";
import type { Offer, Supplier } from "#prisma/records/suppliers";
import { checkRow } from "./check-row-fixture";

const supplier: Supplier = {
  id: "marram",
  name: "Marram Supply",
  leadTimeDays: 9,
  deliveryMinor: 895,
  freeDeliveryMinor: 9000,
  leastOrderMinor: null,
  workingDays: false,
  orderDays: "1234567",
  cutOff: null,
  peakFrom: null,
  peakTo: null,
  peakExtraDays: 0,
  note: null,
  retired: false,
};
const other: Supplier = { ...supplier, id: "tern", name: "Tern Papers" };

function offer(id: string, supplyId: string, changes: Partial<Offer> = {}): Offer {
  return {
    id,
    supplyId,
    supplierId: "marram",
    pack: "roll of 300 ft",
    packAmount: amountOfUnits(300),
    packTyped: "300",
    priceMinor: 3800,
    breakKind: "all-units",
    volumeMl: null,
    volumeTyped: null,
    soldOut: false,
    mostPacksAMonth: null,
    retired: false,
    breaks: [],
    ...changes,
  };
}

const roll = offer("roll", "bubble");
const tape = offer("tape", "carton-tape", { priceMinor: null });
const paper = offer("paper", "packing-paper", { supplierId: "tern" });
const later = { action: "order-later", orderByDate: day("2026-12-14"), suggestedPacks: 2 } as const;

describe("purchase drafts", () => {
  it("start from the suggestion where it is urgent and from none where the supply may wait", () => {
    const rows = [checkRow(), checkRow({ ...later, supplyId: "carton-tape", offerId: "tape" })];
    const [draft] = purchaseDrafts(rows, [roll, tape], [supplier]);
    expect(draft?.lines.map((line) => [line.offerId, line.packs, line.suggestedPacks])).toEqual([
      ["roll", 1, 1],
      ["tape", 0, 2],
    ]);
  });

  it("make no order of what may all wait", () => {
    const rows = [checkRow({ ...later, supplyId: "packing-paper", offerId: "paper" })];
    expect(purchaseDrafts(rows, [paper], [other])).toEqual([]);
  });

  it("are one for each supplier, expected when the last line comes", () => {
    const rows = [
      checkRow(),
      checkRow({ supplyId: "packing-paper", offerId: "paper" }),
      checkRow({ supplyId: "carton-tape", offerId: "tape", arrivalDate: day("2026-12-08") }),
    ];
    const drafts = purchaseDrafts(rows, [roll, tape, paper], [supplier, other]);
    expect(drafts.map((draft) => [draft.supplierId, draft.expectedOn])).toEqual([
      ["marram", "2026-12-08"],
      ["tern", "2026-12-04"],
    ]);
  });

  it("leave out what nobody is known to sell, what is on its way and what is enough", () => {
    const rows = [
      checkRow({ offerId: null }),
      checkRow({ action: "on-its-way" }),
      checkRow({ action: "enough", supplyId: "carton-tape", offerId: "tape" }),
    ];
    expect(purchaseDrafts(rows, [roll, tape], [supplier])).toEqual([]);
  });
});

describe("draft total", () => {
  const rows = [checkRow(), checkRow({ ...later, supplyId: "carton-tape", offerId: "tape" })];
  const [draft] = purchaseDrafts(rows, [roll, tape], [supplier]);
  if (draft === undefined) throw new Error("the draft of the test is missing");

  it("adds the delivery below the supplier's limit", () => {
    expect(draftTotal(draft, {})).toEqual({
      goodsMinor: 3800,
      deliveryMinor: 895,
      withoutPrice: 0,
      lines: 1,
    });
  });

  it("adds no delivery from the limit on", () => {
    expect(draftTotal(draft, { roll: 3 })).toEqual({
      goodsMinor: 11400,
      deliveryMinor: 0,
      withoutPrice: 0,
      lines: 1,
    });
  });

  it("counts lines without a price apart", () => {
    expect(draftTotal(draft, { tape: 1 })).toMatchObject({ goodsMinor: 3800, withoutPrice: 1, lines: 2 });
  });

  it("is nothing, delivery included, when no packs are chosen", () => {
    expect(draftTotal(draft, { roll: 0 })).toEqual({
      goodsMinor: 0,
      deliveryMinor: 0,
      withoutPrice: 0,
      lines: 0,
    });
  });
});
