import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { costChange } from "#lib/packing/cost-change/cost-change";
import { amountOfUnits } from "#lib/units/amount";
import { day } from "#lib/units/day";
import { saveItemType } from "#prisma/records/item-types";
import { packedSpan, parcelsByVersion } from "#prisma/records/packing-costs";
import { correctParcel, voidParcel } from "#prisma/records/parcel-corrections";
import { parcelOf } from "#prisma/records/parcel-lists";
import { recordParcel } from "#prisma/records/parcels";
import { PLAIN_SUPPLY } from "#prisma/records/plain-supply";
import { type ReceiptBody, recordReceipt } from "#prisma/records/receipts";
import { type Recipe, recipesOf, saveRecipe } from "#prisma/records/recipes";
import { saveSupply } from "#prisma/records/supplies";
import { parcelBody, type ShopFixture, shopFixture } from "./shop-fixture";

const CENT = 10_000;
const MARCH = { from: day("2026-03-01"), to: day("2026-03-31") };
const APRIL = { from: day("2026-04-01"), to: day("2026-04-30") };
const on = (at: string) => ({ device: "desk" as const, now: `${at}T12:00:00.000Z` });

let shop: ShopFixture;
beforeEach(async () => {
  shop = await shopFixture();
});
afterEach(() => shop.close());

const card: Recipe = {
  id: "mug-paper",
  itemTypeId: "mug",
  style: "paper",
  effectiveFrom: day("2026-01-01"),
  commonPractice: false,
  note: null,
  steps: [step("bubble", 4, "piece"), step("paper", 7, "parcel")],
  cartons: [{ upTo: 1, supplyId: "carton-8" }],
};

function step(supplyId: string, units: number, per: "piece" | "parcel"): Recipe["steps"][number] {
  const typed = { typedValue: String(units), typedUnit: "" };
  return {
    id: `${supplyId}-step`,
    position: 0,
    words: supplyId,
    supplyId,
    amount: amountOfUnits(units),
    per,
    ...typed,
  };
}

/** 100 use units of a supply, each at so many cents. */
async function receive(supplyId: string, cents: number, receivedOn: string, units = 100): Promise<void> {
  const id = `${supplyId}-${receivedOn}`;
  const body: ReceiptBody = {
    id,
    supplierId: null,
    receivedOn,
    kind: "paid",
    currency: "USD",
    rateMillionths: 1_000_000,
    taxIncluded: true,
    deliveryMinor: 0,
    taxMinor: 0,
    note: null,
    lines: [
      {
        id: `${id}-line`,
        supplyId,
        purchaseLineId: null,
        packs: 1,
        packAmount: amountOfUnits(units),
        packTyped: String(units),
        priceMinor: cents * units,
      },
    ],
  };
  expect((await recordReceipt(shop.db, body, on(receivedOn))).kind).toBe("received");
}

const pack = (id: string, packedOn: string, change = {}) =>
  recordParcel(shop.db, parcelBody(id, { packedOn, ...change }), on(packedOn));

describe("what parcels of an item type took and cost", () => {
  beforeEach(async () => {
    await saveRecipe(shop.db, card, "2026-01-01T12:00:00.000Z");
    await receive("paper", 7, "2026-03-01");
    await receive("bubble", 14, "2026-03-01");
    await receive("carton-8", 80, "2026-03-01");
  });

  // 7 sheets at 7 c, 4 sq ft at 14 c, a carton at 80 c: 185 c.
  it("comes from the ledger, with the cards they were packed by", async () => {
    await pack("first", "2026-03-10");
    await pack("second", "2026-03-11");
    const recipes = await recipesOf(shop.db);
    const span = await packedSpan(shop.db, "mug", MARCH, recipes);
    expect(span.leftOut).toBe(0);
    expect(span.styles).toEqual([
      {
        style: "paper",
        parcels: 2,
        pieces: 2,
        card: { perPiece: new Map([["bubble", 4]]), perParcel: new Map([["paper", 7]]) },
        took: new Map([
          ["bubble", 8],
          ["carton-8", 2],
          ["paper", 14],
        ]),
      },
    ]);
    expect(span.unitCosts.get("paper")).toBeCloseTo(7 * CENT, 6);
    expect(await parcelsByVersion(shop.db, "mug")).toEqual(new Map([["mug-paper", 2]]));
  });

  it("leaves out what is voided, unusual, shared with another item type, or of another span", async () => {
    await saveItemType(shop.db, {
      id: "vase",
      name: "Vase",
      massMg: null,
      massTyped: null,
      lengthUm: null,
      widthUm: null,
      heightUm: null,
      sizesTyped: null,
      note: null,
      retired: false,
      position: 1,
    });
    await pack("kept", "2026-03-10");
    await pack("odd", "2026-03-10", { unusual: true });
    await pack("void", "2026-03-10");
    await voidParcel(shop.db, "void", "a slip", on("2026-03-10"));
    const both = [
      { itemTypeId: "mug", pieces: 1 },
      { itemTypeId: "vase", pieces: 1 },
    ];
    await pack("both", "2026-03-10", { pieces: both });
    await pack("later", "2026-04-02");
    const span = await packedSpan(shop.db, "mug", MARCH, await recipesOf(shop.db));
    expect(span.styles.map(({ parcels }) => parcels)).toEqual([1]);
  });

  it("goes by the parcel as corrected", async () => {
    await pack("first", "2026-03-10");
    const lines = parcelBody("first").lines.map((line) =>
      line.supplyId === "paper" ? { ...line, amount: amountOfUnits(9) } : line,
    );
    await correctParcel(shop.db, parcelBody("first", { lines }), on("2026-03-10"));
    const span = await packedSpan(shop.db, "mug", MARCH, await recipesOf(shop.db));
    expect(span.styles[0]?.took.get("paper")).toBe(9);
  });

  it("counts apart the parcels with a supply whose cost is not known", async () => {
    await saveSupply(shop.db, {
      ...PLAIN_SUPPLY,
      id: "kraft",
      name: "Kraft paper",
      kind: "paper",
      useUnit: "sheet",
    });
    await pack("first", "2026-03-10");
    const lines = parcelBody("x").lines.map((line) =>
      line.supplyId === "paper" ? { ...line, supplyId: "kraft" } : line,
    );
    await pack("priceless", "2026-03-10", { lines });
    const span = await packedSpan(shop.db, "mug", MARCH, await recipesOf(shop.db));
    expect(span.styles.map(({ parcels }) => parcels)).toEqual([1]);
    expect(span.leftOut).toBe(1);
  });

  // 100 dearer sheets on 86 at 7 c: (86 x 7 + 100 x 9) / 186 c a sheet, moving average.
  it("adds up to what the parcels themselves say that they cost", async () => {
    await pack("first", "2026-03-10");
    await pack("second", "2026-03-11");
    await receive("paper", 9, "2026-03-20");
    await pack("third", "2026-04-02");
    const recipes = await recipesOf(shop.db);
    const [march, april] = await Promise.all([
      packedSpan(shop.db, "mug", MARCH, recipes),
      packedSpan(shop.db, "mug", APRIL, recipes),
    ]);
    const change = costChange(march, april, new Set(["carton-8"]));
    const third = await parcelOf(shop.db, "third");
    expect(change.before).toBeCloseTo(185 * CENT, 4);
    expect(change.now).toBeCloseTo(third?.costValue ?? 0, 4);
    expect(change.parts.map(({ cause, supplyId }) => [cause, supplyId])).toEqual([["price", "paper"]]);
    const sheet = (86 * 7 + 100 * 9) / 186;
    expect((change.parts[0]?.cost ?? 0) / CENT).toBeCloseTo(7 * (sheet - 7), 3);
  });
});
