import { describe, expect, it } from "vitest";
import { materialCost } from "#lib/packing/material-cost";
import { amountOfUnits } from "#lib/units/amount";

const CENT = 10_000;
/** The prices and the bill of the trade's single mug: common practice, no source; the sum was worked by hand. */
const PRICES = new Map([
  ["tissue", 3 * CENT],
  ["newsprint", 7 * CENT],
  ["small-bubble", 14 * CENT],
  ["carton", 80 * CENT],
]);
const MUG = [
  { supplyId: "tissue", amount: amountOfUnits(1) },
  { supplyId: "newsprint", amount: amountOfUnits(7) },
  { supplyId: "small-bubble", amount: amountOfUnits(4) },
];

describe("material cost", () => {
  it("adds amounts at their prices and the carton: 3 + 49 + 56 + 80 cents", () => {
    expect(materialCost({ lines: MUG, cartons: ["carton"], unitCosts: PRICES })).toEqual({
      cost: 188 * CENT,
      unknown: [],
    });
  });

  it("rounds once, not line by line: three thirds of an odd price are the price", () => {
    const third = { supplyId: "sheet", amount: amountOfUnits(1 / 3) };
    const sum = materialCost({
      lines: [third, third, third],
      cartons: [],
      unitCosts: new Map([["sheet", 10_001]]),
    });
    expect(sum.cost).toBe(10_001);
  });

  it("leaves out what has no price and names it once", () => {
    const lines = [...MUG, ...MUG, { supplyId: "kraft", amount: amountOfUnits(2) }];
    const sum = materialCost({
      lines,
      cartons: ["odd"],
      unitCosts: new Map([...PRICES, ["newsprint", null]]),
    });
    expect(sum).toEqual({ cost: 118 * CENT, unknown: ["newsprint", "kraft", "odd"] });
  });

  it("refuses a price that is none", () => {
    const unitCosts = new Map([["tissue", Number.NaN]]);
    expect(() => materialCost({ lines: MUG, cartons: [], unitCosts })).toThrow(/got NaN of tissue/);
  });
});
