import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { amountOfUnits, unitsOf } from "#lib/units/amount";
import { addDays, day } from "#lib/units/day";
import { countIntervals } from "#prisma/records/count-intervals";
import { voidParcel } from "#prisma/records/parcel-corrections";
import { recordParcel } from "#prisma/records/parcels";
import { type ReceiptBody, recordReceipt } from "#prisma/records/receipts";
import { saveRecipe } from "#prisma/records/recipes";
import { recordSpoilage } from "#prisma/records/spoilage";
import { countedShop, countPaper, FIRST_COUNT, fillStep, MUGS, mugCard, sheetsParcel } from "./counted-shop";
import { type ShopFixture, shopFixture } from "./shop-fixture";

let shop: ShopFixture;
beforeEach(async () => {
  shop = await shopFixture();
});
afterEach(() => shop.close());

const TODAY = day("2026-06-01");
const on = (packedOn: string) => ({ device: "desk", now: `${packedOn}T12:00:00.000Z` });
const intervals = async () =>
  (await countIntervals(shop.db, TODAY)).find(({ supplyId }) => supplyId === "paper")?.intervals ?? [];

/** One mug card of 11 sheets, a count of 100 sheets on a Monday and one of 50 a week later. */
async function weekWith(between: () => Promise<unknown>) {
  await saveRecipe(shop.db, mugCard("card", [fillStep("fill", 11)]), "2026-01-01T08:00:00.000Z");
  await countPaper(shop.db, 100, { on: FIRST_COUNT });
  await between();
  await countPaper(shop.db, 50, { on: addDays(FIRST_COUNT, 7) });
  const [only] = await intervals();
  if (only === undefined) throw new Error("no interval between two counts");
  return only;
}

/** Sheets that came out of somebody else's parcel. */
function savedSheets(units: number, receivedOn: string): ReceiptBody {
  const head = {
    id: "saved",
    supplierId: null,
    receivedOn,
    kind: "saved",
    currency: "USD",
    note: null,
  } as const;
  const money = { rateMillionths: 1_000_000, taxIncluded: true, deliveryMinor: 0, taxMinor: 0 };
  const pack = { packs: units, packAmount: amountOfUnits(1), packTyped: "1 sheet", priceMinor: null };
  return { ...head, ...money, lines: [{ id: "saved-1", supplyId: "paper", purchaseLineId: null, ...pack }] };
}

describe("intervals from count to count", () => {
  it("hold what was counted, and how often each card was taken", async () => {
    await countedShop(shop.db, 13);
    const found = await intervals();
    expect(found).toHaveLength(MUGS.length);
    expect(found.map(({ uses }) => uses.map(({ times }) => times))).toEqual(MUGS.map((mugs) => [mugs]));
    expect(found[0]).toEqual({
      from: "2026-03-02",
      to: "2026-03-09",
      opening: { counted: amountOfUnits(1000), method: "number" },
      closing: { counted: amountOfUnits(1000 - 6 * 13), method: "number" },
      received: 0,
      spoilt: 0,
      usedByBook: amountOfUnits(66),
      uses: [{ stepKey: "fill", recipeKey: "card", times: 6, amount: amountOfUnits(11) }],
    });
  });

  it("add up what was saved, and apart from it what was spoilt", async () => {
    const interval = await weekWith(async () => {
      await recordReceipt(shop.db, savedSheets(20, "2026-03-04"), on("2026-03-04"));
      const spoilt = { supplyId: "paper", amount: amountOfUnits(6), on: "2026-03-05" };
      await recordSpoilage(
        shop.db,
        { ...spoilt, typedValue: "6", typedUnit: "sheets", words: "Damp" },
        on("2026-03-05"),
      );
    });
    expect(unitsOf(interval.received)).toBe(20);
    expect(unitsOf(interval.spoilt)).toBe(6);
    expect(interval.usedByBook).toBe(0);
  });

  it("take lines that were changed by hand, and unusual parcels, as use by the book and not as use of the card", async () => {
    const interval = await weekWith(async () => {
      const packedOn = "2026-03-04";
      const pack = (id: string, sheets: number, unusual = false) =>
        recordParcel(shop.db, sheetsParcel(id, sheets, { packedOn, unusual }), on(packedOn));
      await pack("by-the-card", 11);
      await pack("by-hand", 14);
      await pack("unusual", 11, true);
    });
    expect(unitsOf(interval.usedByBook)).toBe(36);
    expect(interval.uses.map(({ times }) => times)).toEqual([1]);
  });

  it("count a step for each piece by the pieces of its item type", async () => {
    const perPiece = mugCard("card", [fillStep("wrap", 2, { per: "piece", words: "Wrap" })]);
    const interval = await weekWith(async () => {
      await saveRecipe(shop.db, perPiece, "2026-01-02T08:00:00.000Z");
      const parcel = sheetsParcel("three-mugs", 6, {
        packedOn: "2026-03-04",
        pieces: [{ itemTypeId: "mug", pieces: 3 }],
      });
      const lines = parcel.lines.map((line) => ({ ...line, recipeStepId: "wrap" }));
      await recordParcel(shop.db, { ...parcel, lines }, on("2026-03-04"));
    });
    expect(interval.uses).toEqual([
      { stepKey: "wrap", recipeKey: "card", times: 3, amount: amountOfUnits(2) },
    ]);
  });

  it("leave out a parcel that was taken back, also after the next count", async () => {
    await weekWith(async () => {
      await recordParcel(
        shop.db,
        sheetsParcel("taken-back", 11, { packedOn: "2026-03-04" }),
        on("2026-03-04"),
      );
    });
    await voidParcel(shop.db, "taken-back", "never packed", on("2026-03-20"));
    const [interval] = await intervals();
    expect(interval?.usedByBook).toBe(0);
    expect(interval?.uses).toEqual([]);
  });

  it("put a parcel that was entered later into the week in which it was packed", async () => {
    await weekWith(() => Promise.resolve());
    await recordParcel(shop.db, sheetsParcel("late", 11, { packedOn: "2026-03-04" }), on("2026-03-20"));
    await countPaper(shop.db, 50, { on: addDays(FIRST_COUNT, 21) });
    expect((await intervals()).map(({ usedByBook }) => unitsOf(usedByBook))).toEqual([11, 0]);
  });

  it("keep a glance as a count of its own sort", async () => {
    await countPaper(shop.db, 100, { on: FIRST_COUNT });
    await countPaper(shop.db, 100, { on: addDays(FIRST_COUNT, 7), method: "looks-right" });
    expect((await intervals())[0]?.closing.method).toBe("looks-right");
  });

  it("do not begin before the first count, and end with the day asked for", async () => {
    await countedShop(shop.db, 13);
    const [until] = await countIntervals(shop.db, addDays(FIRST_COUNT, 8));
    expect(until?.intervals).toHaveLength(1);
    expect(until?.countDays).toEqual(["2026-03-02", "2026-03-09"]);
  });
});
