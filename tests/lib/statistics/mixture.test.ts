import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { mixtureMoments, mixtureQuantile, mixtureUpTo } from "#lib/statistics/mixture";

const three = [
  { weight: 0.5, centre: 0, scale: 1, degrees: null },
  { weight: 0.3, centre: 4, scale: 2, degrees: 4 },
  { weight: 0.2, centre: -3, scale: 0.5, degrees: null },
];

describe("mixture", () => {
  it("of one bell is that bell", () => {
    const one = [{ weight: 1, centre: 5, scale: 2, degrees: null }];
    expect(mixtureUpTo(one, 5)).toBe(0.5);
    expect(mixtureQuantile(one, 0.95)).toBeCloseTo(8.289707, 6);
    expect(mixtureMoments([{ weight: 1, centre: 5, scale: 2, degrees: 4 }])).toEqual({
      mean: 5,
      variance: 8,
    });
  });

  // SciPy 1.17.1: optimize.brentq on the weighted sum of stats.norm.cdf and stats.t.cdf.
  it.each([
    [0.01, -3.891952598869369],
    [0.25, -1.3797056619724855],
    [0.5, 0.1558145940286443],
    [0.9, 4.928333315518485],
    [0.999, 14.333601683125933],
  ])("has the quantile of %s that another library finds", (chance, quantile) => {
    expect(mixtureQuantile(three, chance)).toBeCloseTo(quantile, 6);
  });

  it("does not mind weights that do not add up to 1", () => {
    const doubled = three.map((part) => ({ ...part, weight: 2 * part.weight }));
    expect(mixtureUpTo(doubled, 1)).toBeCloseTo(mixtureUpTo(three, 1), 12);
  });

  it("never falls with the value", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -50, max: 50, noNaN: true }),
        fc.double({ min: 0, max: 9, noNaN: true }),
        (value, more) => {
          expect(mixtureUpTo(three, value + more)).toBeGreaterThanOrEqual(mixtureUpTo(three, value));
        },
      ),
    );
  });

  it("refuses no weight, chances of 0 and 1, and tails without a variance", () => {
    expect(() => mixtureUpTo([], 1)).toThrow(RangeError);
    expect(() => mixtureMoments([])).toThrow(RangeError);
    expect(() => mixtureQuantile(three, 1)).toThrow(RangeError);
    expect(() => mixtureMoments([{ weight: 1, centre: 0, scale: 1, degrees: 2 }])).toThrow(RangeError);
  });
});
