import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { amount, amountOfUnits } from "#lib/units/amount";
import { addDays, day } from "#lib/units/day";
import { recordCount } from "#prisma/records/counts";
import type { Recorder } from "#prisma/records/ledger";
import { returnParcel, voidParcel } from "#prisma/records/parcel-corrections";
import { recordParcel } from "#prisma/records/parcels";
import { cancelPurchaseLine, placePurchase } from "#prisma/records/purchases";
import { recordReceipt } from "#prisma/records/receipts";
import { saveOffer, saveSupplier } from "#prisma/records/suppliers";
import { supplyHistories } from "#prisma/records/supply-histories";
import { checkInputs, weeklyCheckOn } from "#prisma/records/weekly-checks";
import { parcelBody, type ShopFixture, shopFixture } from "./shop-fixture";

const TODAY = day("2026-03-11");
const noonOf = (on: string): Recorder => ({ device: "desk", now: `${on}T12:00:00.000Z` });

let shop: ShopFixture;

beforeEach(async () => {
  shop = await shopFixture();
  await saveSupplier(shop.db, {
    id: "mill",
    name: "Mill",
    leadTimeDays: 5,
    deliveryMinor: 0,
    freeDeliveryMinor: null,
    note: null,
    retired: false,
  });
  await saveOffer(shop.db, {
    id: "bundle",
    supplyId: "paper",
    supplierId: "mill",
    pack: "bundle of 100",
    packAmount: amountOfUnits(100),
    packTyped: "100",
    priceMinor: 1_500,
    retired: false,
    breaks: [],
  });
  await count("c1", "2026-01-04", 60);
  for (const week of [0, 1, 2, 3, 4, 5, 6, 7, 8]) {
    const packedOn = addDays(day("2026-01-06"), 7 * week);
    await recordParcel(shop.db, parcelBody(`p${week}`, { packedOn }), noonOf(packedOn));
  }
  await placePurchase(
    shop.db,
    {
      id: "order",
      supplierId: "mill",
      placedOn: "2026-03-09",
      note: null,
      lines: [line("first", "2026-03-14"), line("second", "2026-03-16")],
    },
    noonOf("2026-03-09"),
  );
});

afterEach(() => shop.close());

const line = (id: string, expectedOn: string) => ({
  id,
  supplyId: "paper",
  offerId: "bundle",
  packs: 3,
  packAmount: amountOfUnits(100),
  priceMinor: 1_500,
  expectedOn,
});

const count = (id: string, on: string, sheets: number) =>
  recordCount(
    shop.db,
    {
      id,
      supplyId: "paper",
      amount: amountOfUnits(sheets),
      method: "number",
      typed: String(sheets),
      note: null,
    },
    noonOf(on),
  );

describe("weekly check of the records", () => {
  it("says of a day what it said then, whatever took effect later", async () => {
    const before = await weeklyCheckOn(shop.db, TODAY);
    expect(before?.rows.find((row) => row.supplyId === "paper")?.onOrder).toBe(amountOfUnits(600));

    await recordParcel(shop.db, parcelBody("late", { packedOn: "2026-03-12" }), noonOf("2026-03-12"));
    await recordReceipt(
      shop.db,
      {
        id: "part",
        supplierId: "mill",
        receivedOn: "2026-03-13",
        kind: "paid",
        currency: "USD",
        rateMillionths: 1_000_000,
        taxIncluded: true,
        deliveryMinor: 0,
        taxMinor: 0,
        note: null,
        lines: [
          {
            id: "part-1",
            supplyId: "paper",
            purchaseLineId: "first",
            packs: 1,
            packAmount: amountOfUnits(100),
            packTyped: "100",
            priceMinor: 1_500,
          },
        ],
        restStillComes: [{ purchaseLineId: "first", packs: 2, expectedOn: "2026-03-20" }],
      },
      noonOf("2026-03-13"),
    );
    await cancelPurchaseLine(shop.db, "second", "2026-03-13");
    await count("c2", "2026-03-14", 90);
    await returnParcel(
      shop.db,
      "p8",
      { on: "2026-03-15", lines: [{ supplyId: "paper", amount: amountOfUnits(1) }] },
      noonOf("2026-03-15"),
    );
    await recordParcel(shop.db, parcelBody("gone", { packedOn: "2026-03-16" }), noonOf("2026-03-16"));
    await voidParcel(shop.db, "gone", "undone", noonOf("2026-03-16"));

    expect(await weeklyCheckOn(shop.db, TODAY)).toEqual(before);
    const after = await weeklyCheckOn(shop.db, day("2026-03-17"));
    expect(after?.rows.find((row) => row.supplyId === "paper")?.onOrder).toBe(amountOfUnits(200));
  });

  it("learns of a parcel of an earlier day that was entered late", async () => {
    const before = await checkInputs(shop.db, TODAY);
    await recordParcel(shop.db, parcelBody("forgotten", { packedOn: "2026-03-10" }), noonOf("2026-03-20"));
    const after = await checkInputs(shop.db, TODAY);
    const used = (found: typeof before) =>
      found?.inputs.find((input) => input.supplyId === "paper")?.useByDay.length;
    expect(used(after)).toBe((used(before) ?? 0) + 1);
  });

  it("leaves the first count out of the count differences, also for what was packed before it", async () => {
    await recordParcel(shop.db, parcelBody("older", { packedOn: "2026-01-02" }), noonOf("2026-03-10"));
    await count("c2", "2026-03-10", 41);
    const found = await checkInputs(shop.db, TODAY);
    const paper = found?.inputs.find((input) => input.supplyId === "paper");
    expect(paper?.onHand).toBe(amountOfUnits(41));
    const history = (await supplyHistories(shop.db, TODAY)).get("paper");
    expect(history?.countDifferences.map(({ day: on }) => on)).toEqual(["2026-03-10"]);
  });
});

describe("supply histories", () => {
  it("are the movements summed a day", async () => {
    await count("c2", "2026-03-10", 41);
    const histories = await supplyHistories(shop.db, TODAY);
    const movements = await shop.db.movement.findMany({ where: { effectiveDay: { lte: TODAY } } });
    const sumOf = (supplyId: string, causes: readonly string[]) =>
      movements
        .filter((row) => row.supplyId === supplyId && causes.includes(row.cause))
        .reduce((sum, row) => sum + Number(row.amount), 0);
    expect([...histories.keys()].sort()).toEqual(["bubble", "carton-8", "paper"]);
    for (const [supplyId, history] of histories) {
      const all = [...new Set(movements.map((row) => row.cause))];
      expect(history.onHand).toBe(sumOf(supplyId, all));
      const used = history.useByDay.reduce((sum, use) => sum + use.amount, 0);
      expect(used).toBe(-sumOf(supplyId, ["packed", "spoilt", "returned"]));
      const days = history.useByDay.map((use) => use.day);
      expect(days).toEqual(days.toSorted());
      const differences = history.countDifferences.reduce((sum, row) => sum + row.amount, 0);
      expect(amount(differences)).toBe(sumOf(supplyId, ["count-difference"]));
    }
  });
});
