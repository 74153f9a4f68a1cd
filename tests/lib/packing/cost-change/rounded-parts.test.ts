import { describe, expect, it } from "vitest";
import { roundedParts } from "#lib/packing/cost-change/rounded-parts";

// Largest remainders, worked by hand: the sums are 18.2, 0.4 and −1.5 + 1 = −0.5.
describe("rounded parts", () => {
  it("add up to the rounded sum", () => {
    expect(roundedParts([9.4, 7.4, 1.4])).toEqual([10, 7, 1]);
    expect(roundedParts([0.2, 0.2])).toEqual([0, 0]);
  });

  it("may be of either sign", () => {
    const parts = roundedParts([-1.6, 2.7, -0.6]);
    expect(parts).toEqual([-2, 3, 0]);
    expect(roundedParts([-0.4, -0.4, -0.4])).toEqual([0, 0, -1]);
  });

  it("of nothing are nothing", () => {
    expect(roundedParts([])).toEqual([]);
    expect(() => roundedParts([Number.NaN])).toThrow(/got NaN/);
  });
});
