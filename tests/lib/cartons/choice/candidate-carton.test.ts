import { describe, expect, it } from "vitest";
import { cartonStock, isToUseUp } from "#lib/cartons/choice/candidate-carton";

describe("a carton that a load may go in", () => {
  it("is there, is not there, or only a look can tell", () => {
    expect([2, 1, 0, -1, null].map(cartonStock)).toEqual([
      "onHand",
      "onHand",
      "none",
      "countFirst",
      "countFirst",
    ]);
  });

  it("is to be used up where it sits or the seller said so, not where it is slow", () => {
    expect(isToUseUp({ ageing: "sits", useFirst: false })).toBe(true);
    expect(isToUseUp({ ageing: "moves", useFirst: true })).toBe(true);
    expect(isToUseUp({ ageing: "slow", useFirst: false })).toBe(false);
  });
});
