import { describe, expect, it } from "vitest";
import { liveSum, type SumGround } from "#app/recipes/live-sum.ts";
import type { RecipeVersion } from "#lib/packing/recipe-version";
import { amountOfUnits } from "#lib/units/amount";
import { day } from "#lib/units/day";
import { CARD_TERMS, TYPED_CARD } from "./card-terms";

const CENT = 10_000;
const TODAY = day("2026-11-25");
const card = (style: RecipeVersion["style"], sheets: number): RecipeVersion => ({
  id: style,
  itemTypeId: "mug",
  style,
  effectiveFrom: TODAY,
  steps: [
    {
      id: "fill",
      position: 0,
      words: "Fill",
      supplyId: "paper",
      amount: amountOfUnits(sheets),
      typedValue: String(sheets),
      typedUnit: "",
      per: "parcel",
    },
  ],
  cartons: [{ upTo: 1, supplyId: "cube-8" }],
});
const prices = new Map([
  ["tissue", 3 * CENT],
  ["paper", 7 * CENT],
  ["cube-8", 80 * CENT],
  ["old-paper", 5 * CENT],
]);
const ground: SumGround = {
  ...CARD_TERMS,
  itemTypeId: "mug",
  style: "paper",
  today: TODAY,
  cards: [card("paper", 8), card("bubble", 2)],
  terms: {
    masses: new Map([
      ["tissue", 3_000],
      ["paper", 27_200],
      ["cube-8", 197_000],
    ]),
    book: prices,
    replacement: prices,
  },
};
const sumOf = (change: Readonly<Record<string, string>> = {}) =>
  liveSum({ ...TYPED_CARD, ...change }, ground);

// By hand: 370 + 4/3 x 3 + 7 x 27.2 + 197 = 761.4 g; 4/3 x 3 + 7 x 7 + 80 = 133 c.
describe("what a card comes to while it is typed", () => {
  it("is the sum of its rows, of the bare piece as typed and of its carton", () => {
    const { sum, bill, without } = sumOf();
    expect(sum.mass).toEqual({ mg: 761_400, unknown: [] });
    expect(sum.book.cost).toBe(133 * CENT);
    expect(bill.map(({ supplyId }) => supplyId)).toEqual(["tissue", "paper", "cube-8"]);
    expect(without).toEqual([]);
  });

  // 370 + 8 x 27.2 + 197 = 784.6 g, 8 x 7 + 80 = 136 c; on bubble 370 + 2 x 27.2 + 197 = 621.4 g.
  it("stands beside the card in use and the other styles, with the bare weight as typed", () => {
    const { inUse, others } = sumOf();
    expect(inUse).toMatchObject({ mass: { mg: 784_600 }, book: { cost: 136 * CENT } });
    expect(others.map(({ style, sum }) => [style, sum.mass.mg])).toEqual([["bubble", 621_400]]);
    expect(sumOf({ mass: "470 g" }).inUse?.mass.mg).toBe(884_600);
  });

  it("changes with an amount, a supply and a carton", () => {
    expect(sumOf({ "amount.1": "8" }).sum.mass.mg).toBe(761_400 + 27_200);
    expect(sumOf({ "supplyId.1": "tissue" }).sum.mass.mg).toBe(761_400 - 7 * 27_200 + 7 * 3_000);
    const { "upTo.0": _upTo, ...bare } = TYPED_CARD;
    expect(liveSum(bare, ground).sum).toMatchObject({ mass: { mg: 761_400 - 197_000 }, cartons: [] });
  });

  it("leaves out a row that can't be read, names it and says why beside it", () => {
    const { sum, without, problems } = sumOf({ "amount.1": "plenty" });
    expect(sum.mass.mg).toBe(761_400 - 7 * 27_200);
    expect(without).toEqual([{ of: "step", row: 1 }]);
    expect(problems["amount.1"]).toMatch(/“plenty” can’t be read/);
  });

  it("leaves out a step and a carton that are no longer used, and says so", () => {
    const { sum, without, problems } = sumOf({ "supplyId.1": "old-paper", "cartonId.0": "old-cube" });
    expect(sum.mass.mg).toBe(374_000);
    expect(without).toEqual([
      { of: "step", row: 1 },
      { of: "carton", row: 0 },
    ]);
    expect(problems["supplyId.1"]).toMatch(/“Old paper” is no longer used/);
    expect(problems["cartonId.0"]).toMatch(/“Old carton” is no longer used/);
  });

  it("does not call a row wrong whose amount is not typed yet, but says that it is without it", () => {
    const { without, problems } = sumOf({ "words.2": "Close it" });
    expect(without).toEqual([{ of: "step", row: 2 }]);
    expect(problems).toEqual({});
  });

  it("counts a row without words: they do not matter to the sum", () => {
    const { "words.1": _words, ...wordless } = TYPED_CARD;
    expect(liveSum(wordless, ground).sum.mass.mg).toBe(761_400);
  });

  it("names a piece whose weight is missing or can't be read", () => {
    expect(sumOf({ mass: "heavy" }).sum.mass).toEqual({ mg: 391_400, unknown: ["mug"] });
    expect(sumOf({ mass: "heavy" }).problems["mass"]).toMatch(/“heavy” can’t be read/);
  });
});
