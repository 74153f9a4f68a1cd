import { describe, expect, it } from "vitest";
import { STARTER_ITEMS } from "#prisma/starter/starter-items";
import { starterSteps, starterSupplyIds } from "#prisma/starter/starter-steps";
import { starterSupply } from "#prisma/starter/starter-supplies";

// Common practice, no source: a table worked by hand before the recipes were written out in steps.
// [id, tissue sheets, packing paper sheets, small bubble pieces, large bubble sq ft, tape inches,
//  packing grams on paper, parcel grams on paper, void cubic inches, parcel grams on bubble fill]
type Row = readonly [string, number, number, number, number, number, number, number, number, number];
const TABLE: readonly Row[] = [
  ["stemmed-glass", 1.5, 10, 5, 0, 75, 566, 746, 530, 538],
  ["stemmed-pair", 3, 13, 10, 0, 83, 739, 1099, 701, 830],
  ["lamp-chimney", 1, 13, 5, 0, 75, 669, 819, 609, 566],
  ["teapot", 2.5, 12, 6, 3, 91, 743, 1493, 610, 1240],
  ["four-plates", 4, 22, 8, 4, 111, 1214, 3214, 1168, 2757],
  ["mug", 1, 7, 4, 0, 75, 427, 797, 372, 652],
  ["mug-pair", 2, 11, 8, 0, 87, 635, 1375, 594, 1148],
  ["cup-and-saucer", 1.5, 7, 4, 0, 75, 430, 680, 350, 532],
  ["figurine", 3, 9, 5, 0, 83, 546, 896, 480, 709],
  ["framed-tile", 1, 6, 4, 2, 99, 510, 1410, 326, 1286],
  ["bowl", 1.5, 15, 5, 2, 99, 835, 1535, 655, 1261],
  ["bottle", 1, 12, 5, 0, 75, 641, 1141, 609, 889],
  ["vase", 2, 27, 3, 6, 99, 1296, 2496, 1340, 1951],
  ["mantel-clock", 2, 28, 4, 9, 107, 1385, 3585, 1359, 3043],
  ["bauble", 1.5, 3, 1, 0, 63, 275, 315, 152, 252],
  ["iron-pan", 0, 12, 0, 0, 111, 702, 3002, 318, 2878],
];

/** The table adds 10 g of papers to each parcel and leaves household tape out. */
const PAPERS_GRAMS = 10;

function itemOf(id: string) {
  const item = STARTER_ITEMS.find((each) => each.id === id);
  if (item === undefined) throw new RangeError(`no starter item ${id}`);
  return item;
}

function totals(id: string, style: "paper" | "bubble"): Map<string, number> {
  const sums = new Map<string, number>();
  for (const step of starterSteps(itemOf(id), style)) {
    sums.set(step.supplyId, (sums.get(step.supplyId) ?? 0) + step.amount);
  }
  return sums;
}

function packingGrams(id: string, style: "paper" | "bubble"): number {
  const sums = totals(id, style);
  sums.delete("household-tape");
  const soft = [...sums].reduce(
    (sum, [supply, amount]) => sum + (amount / 12_000) * starterSupply(supply).massMg,
    0,
  );
  const outer = itemOf(id).cartons[0];
  if (outer === undefined) throw new RangeError(`no carton for ${id}`);
  return (soft + starterSupply(`carton-${outer.sizes}`).massMg) / 1000 + PAPERS_GRAMS;
}

describe("starterSteps", () => {
  it("covers every row of the table and nothing else", () => {
    expect(STARTER_ITEMS.map((item) => item.id).sort()).toEqual(TABLE.map((row) => row[0]).sort());
  });

  it.each(TABLE)("%s on paper adds up to the table exactly", (id, tissue, paper, small, large, tape) => {
    const sums = totals(id, "paper");
    const of = (supply: string) => sums.get(supply) ?? 0;
    expect(of("tissue")).toBe(tissue * 12_000);
    expect(of("packing-paper")).toBe(paper * 12_000);
    expect(of("small-bubble")).toBe(small * 12_000);
    expect(of("large-bubble")).toBe(large * 12_000);
    expect(of("carton-tape")).toBe(tape * 1_000);
  });

  it.each(TABLE)("%s on bubble swaps only the fill, at 65 cubic inches a square foot", (id, ...row) => {
    const [tissue, paper, small, large, tape, , , voidInches] = row;
    const fillSheets = Math.round(voidInches / 52);
    const sums = totals(id, "bubble");
    const of = (supply: string) => sums.get(supply) ?? 0;
    expect(of("tissue")).toBe(tissue * 12_000);
    expect(of("packing-paper")).toBe((paper - fillSheets) * 12_000);
    expect(of("small-bubble")).toBe(small * 12_000);
    // Hundredths of a square foot: at most 0.005 from the stated void over 65.
    expect(Math.abs(of("large-bubble") / 12_000 - large - voidInches / 65)).toBeLessThanOrEqual(0.005 + 1e-9);
    expect(of("carton-tape")).toBe(tape * 1_000);
  });

  it.each(TABLE)("%s weighs what the table says, to the gram that rounding a carton costs", (id, ...row) => {
    const [, , , , , packing, parcel, , onBubble] = row;
    const bare = itemOf(id).grams;
    expect(bare).toBe(parcel - packing);
    expect(Math.abs(packingGrams(id, "paper") - packing)).toBeLessThanOrEqual(1.1);
    expect(Math.abs(bare + packingGrams(id, "bubble") - onBubble)).toBeLessThanOrEqual(1.1);
  });

  it("keeps the order of work: pieces first, then the base, the rest of the fill, and the tape last", () => {
    for (const item of STARTER_ITEMS) {
      const per = starterSteps(item, "paper").map((step) => step.per);
      expect(per.lastIndexOf("piece")).toBeLessThan(per.indexOf("parcel"));
      expect(starterSteps(item, "paper").at(-1)?.supplyId).toBe("carton-tape");
      expect(per.filter((each) => each === "parcel")).toHaveLength(3);
    }
  });
});

describe("starterSupplyIds", () => {
  it("names cartons, both fills and the wraps, each once", () => {
    expect(starterSupplyIds(itemOf("mug")).sort()).toEqual([
      "carton-12x12x8",
      "carton-12x9x8",
      "carton-8x8x8",
      "carton-tape",
      "household-tape",
      "large-bubble",
      "packing-paper",
      "small-bubble",
      "tissue",
    ]);
  });
});
