import { describe, expect, it } from "vitest";
import { readDraftForm } from "#app/buying/draft-form.ts";
import { draftNotes } from "#app/buying/draft-notes.ts";
import { offersForDraft } from "#app/buying/offers-for-draft.ts";
import { day } from "#lib/units/day";
import { OFFER, order, orderLine, units } from "./order-fixture";

const SHEETS = { ...OFFER, id: "bundle", supplyId: "paper", pack: "25 lb bundle", packAmount: units(416) };
const question = {
  purchaseId: "order",
  offers: [OFFER, SHEETS],
  minorDigits: 2,
  expectedOn: day("2026-03-09"),
};

describe("the form of a draft", () => {
  it("has a line for each offer with packs, at the price reached", () => {
    const steps = { ...OFFER, breaks: [{ fromPacks: 4, priceMinor: 2_450 }] };
    const read = readDraftForm(
      { "packs:roll": "4", "packs:bundle": "0", delivery: "8.95" },
      { ...question, offers: [steps, SHEETS] },
    );
    expect(read).toEqual({
      kind: "draft",
      change: {
        deliveryMinor: 895,
        note: null,
        lines: [
          {
            id: "order-roll",
            supplyId: "bubble",
            offerId: "roll",
            packs: 4,
            packAmount: units(188),
            priceMinor: 2_450,
            expectedOn: "2026-03-09",
          },
        ],
      },
    });
  });

  it("names every field that can't be read, and takes nothing then", () => {
    const read = readDraftForm({ "packs:roll": "1½", "packs:bundle": "-1", delivery: "much" }, question);
    expect(Object.keys(read.kind === "problems" ? read.problems : {}).sort()).toEqual([
      "delivery",
      "packs:bundle",
      "packs:roll",
    ]);
  });

  it("keeps what stands in it although its offer was withdrawn", () => {
    const kept = offersForDraft(order({ lines: [orderLine({ offerId: "gone" })] }), [SHEETS]);
    expect(kept.map((offer) => [offer.id, offer.retired])).toEqual([
      ["bundle", false],
      ["gone", true],
    ]);
  });
});

describe("notes on a draft", () => {
  const supplier = {
    id: "north",
    name: "Invented supplier",
    leadTimeDays: 6,
    deliveryMinor: 895,
    freeDeliveryMinor: 10_000,
    leastOrderMinor: 12_000,
    workingDays: false,
    orderDays: "1234567",
    cutOff: null,
    peakFrom: null,
    peakTo: null,
    peakExtraDays: 0,
    note: null,
    retired: false,
  };
  const money = (minor: number) => `$${minor / 100}`;
  const notes = (changes: { leastOrderMinor?: number; freeDeliveryMinor?: number | null }) =>
    draftNotes(order({ status: "draft" }), { ...supplier, ...changes }, new Map(), money);

  it("say how much is missing to the least order, and where delivery is not as the terms say", () => {
    // 4 × 26.00 = 104.00 of goods: 16.00 short of 120.00, and free of delivery from 100.00 on.
    expect(notes({})).toEqual([
      "Invented supplier takes orders from $120: $16 of goods are missing.",
      "By its terms Invented supplier takes nothing for delivering this; the draft says $8.95.",
    ]);
    expect(notes({ leastOrderMinor: 10_400, freeDeliveryMinor: null })).toEqual([]);
  });

  it("warn of a supplier that is no longer used", () => {
    expect(draftNotes(order(), null, new Map(), money)).toEqual([
      "Invented supplier is marked as no longer used. Check it before you order.",
    ]);
  });
});
