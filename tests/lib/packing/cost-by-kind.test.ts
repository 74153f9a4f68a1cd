import { describe, expect, it } from "vitest";
import { costByKind } from "#lib/packing/cost-by-kind";
import { amountOfUnits } from "#lib/units/amount";

const CENT = 10_000;
const sheets = { supplyId: "paper", kind: "paper", amount: amountOfUnits(7), value: 49 * CENT };
const kraft = { supplyId: "kraft", kind: "paper", amount: amountOfUnits(2), value: 10 * CENT };
const carton = { supplyId: "cube-8", kind: "carton", amount: amountOfUnits(1), value: 90 * CENT };
const PRICES = new Map([
  ["paper", 8 * CENT],
  ["kraft", 6 * CENT],
  ["cube-8", 110 * CENT],
]);

// Sums by hand: 7 × 8 + 2 × 6 = 68 cents of paper, and a carton of 110.
describe("the cost by kind", () => {
  it("is told as booked and at today's prices, and adds up", () => {
    expect(costByKind([sheets, carton, kraft], PRICES)).toEqual({
      kinds: [
        { kind: "paper", cash: 59 * CENT, cashUnknown: [], replacement: 68 * CENT, replacementUnknown: [] },
        { kind: "carton", cash: 90 * CENT, cashUnknown: [], replacement: 110 * CENT, replacementUnknown: [] },
      ],
      total: { cash: 149 * CENT, cashUnknown: [], replacement: 178 * CENT, replacementUnknown: [] },
    });
  });

  it("names what is not known on either basis instead of counting it as nothing", () => {
    const { total } = costByKind([{ ...sheets, value: null }, carton], new Map([["paper", 8 * CENT]]));
    expect(total).toEqual({
      cash: 90 * CENT,
      cashUnknown: ["paper"],
      replacement: 56 * CENT,
      replacementUnknown: ["cube-8"],
    });
  });

  it("is nothing of nothing", () => {
    expect(costByKind([], PRICES)).toMatchObject({ kinds: [], total: { cash: 0, replacement: 0 } });
  });
});
