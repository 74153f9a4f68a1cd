import { describe, expect, it } from "vitest";
import { spreadParts } from "#lib/replenishment/simulation/spread-parts";

/** Squared variation of the mean of n weeks, each with a factor of its own, under a common one. */
const dispersionOf = ({ common, weekly }: { common: number; weekly: number }, weeks: number) =>
  common + ((1 + common) * weekly) / weeks;

describe("the parts of a spread", () => {
  it("have the dispersion of single weeks and of the longest sum", () => {
    for (const dispersions of [
      [0.3, 0.2],
      [0.5, 0.35, 0.3, 0.28],
      [0.04, 0.02, 0.01334],
    ]) {
      const parts = spreadParts(dispersions);
      expect(dispersionOf(parts, 1)).toBeCloseTo(dispersions[0] ?? Number.NaN, 12);
      expect(dispersionOf(parts, dispersions.length)).toBeCloseTo(dispersions.at(-1) ?? Number.NaN, 12);
    }
  });

  it("are all common where long sums are no surer than single weeks", () => {
    expect(spreadParts([0.2, 0.3])).toEqual({ common: 0.3, weekly: 0 });
    expect(spreadParts([0.2])).toEqual({ common: 0.2, weekly: 0 });
    expect(spreadParts([])).toEqual({ common: 0, weekly: 0 });
  });

  it("are all of the week where long sums are surer than independent weeks", () => {
    expect(spreadParts([0.4, 0.1])).toEqual({ common: 0, weekly: 0.4 });
  });
});
