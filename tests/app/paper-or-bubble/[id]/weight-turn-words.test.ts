import { describe, expect, it } from "vitest";
import { weightStretches } from "#app/paper-or-bubble/[id]/weight-turn-words.ts";
import type { CostOverWeight, WeightPoint } from "#lib/cushioning/cost-over-weight";
import { GRAM } from "../../../lib/cushioning/small-ways";

const point = (grams: number, paper: number, bubble: number): WeightPoint => ({
  bareMg: grams * GRAM,
  totals: new Map([
    ["paper", paper],
    ["bubble", bubble],
  ]),
});
const OVER: CostOverWeight = {
  points: [point(100, 800, 900), point(500, 950, 900), point(900, 950, 1_000)],
  turns: [
    { bareMg: 320 * GRAM, from: "paper", to: "bubble" },
    { bareMg: 610 * GRAM, from: "bubble", to: "paper" },
  ],
};

describe("over which weights each way is the cheapest", () => {
  it("is told from light to heavy, from turn to turn", () => {
    expect(weightStretches(OVER, "metric")).toEqual([
      { style: "paper", words: "100 g to 320 g" },
      { style: "bubble", words: "320 g to 610 g" },
      { style: "paper", words: "610 g to 900 g" },
    ]);
  });

  it("is told in the shop's measures", () => {
    expect(weightStretches(OVER, "imperial")[2]?.words).toBe("1 lb 6 oz to 2 lb");
  });

  it("is one stretch where the choice never turns", () => {
    expect(weightStretches({ ...OVER, turns: [] }, "metric")).toEqual([
      { style: "paper", words: "100 g to 900 g" },
    ]);
  });

  it("is nothing where nothing was reckoned", () => {
    expect(weightStretches({ points: [], turns: [] }, "metric")).toEqual([]);
  });
});
