import fc from "fast-check";
import { cumulativeStdNormalProbability } from "simple-statistics";
import { describe, expect, it } from "vitest";
import { spreadTop, spreadUpTo, type WeightSpread } from "#lib/postage/weight-spread";
import { gridOf } from "#lib/statistics/grid-distribution";

const basis = { parcels: 14, isGuess: false };
const normal: WeightSpread = { basis, kind: "normal", meanMg: 830_000, deviationMg: 60_000 };
const errors: WeightSpread = {
  basis,
  kind: "errors",
  predictedMg: 830_000,
  errorsMg: [-20_000, 0, 40_000, 90_000],
};
const quantiles: WeightSpread = {
  basis,
  kind: "quantiles",
  points: [
    { chance: 0.1, mg: 760_000 },
    { chance: 0.5, mg: 830_000 },
    { chance: 0.9, mg: 950_000 },
  ],
};
const grid: WeightSpread = { basis, kind: "grid", grid: gridOf(1_000, [0, 1, 2, 1]) };
const even: WeightSpread = {
  basis,
  kind: "cumulative",
  upTo: (mg) => Math.min(1, Math.max(0, (mg - 700_000) / 200_000)),
  topMg: 900_000,
};
const all = [normal, errors, quantiles, grid, even];

describe("what a parcel may weigh", () => {
  it("as a normal spread agrees with a table of the normal distribution", () => {
    // simple-statistics keeps a table to hundredths of a deviation, which these are, rounded to four digits.
    for (const mg of [650_000, 800_000, 830_000, 900_200, 999_800]) {
      const known = cumulativeStdNormalProbability((mg - 830_000) / 60_000);
      expect(Math.abs(spreadUpTo(normal, mg) - known)).toBeLessThanOrEqual(0.5e-4);
    }
  });

  it("without any deviation is there or not, and a stored limit counts as reached", () => {
    const sure: WeightSpread = { ...normal, meanMg: 141_748, deviationMg: 0 };
    expect([141_747, 141_747.615625, 141_748].map((mg) => spreadUpTo(sure, mg))).toEqual([0, 1, 1]);
  });

  it("as past errors counts those that stay under the limit", () => {
    expect([809_999, 810_000, 830_000, 870_000, 920_000].map((mg) => spreadUpTo(errors, mg))).toEqual([
      0, 0.25, 0.5, 0.75, 1,
    ]);
  });

  it("stored as 141,748 mg is not over 5 oz, one milligram more is", () => {
    const fiveOunces = 141_747.615625;
    const past: WeightSpread = { ...errors, predictedMg: 141_748, errorsMg: [0, 1] };
    expect(spreadUpTo(past, fiveOunces)).toBe(0.5);
    expect(spreadUpTo({ basis, kind: "grid", grid: gridOf(70_874, [0, 1, 1]) }, fiveOunces)).toBe(1);
    expect(spreadUpTo({ basis, kind: "grid", grid: gridOf(141_749, [1, 1]) }, fiveOunces)).toBe(0.5);
  });

  it("as quantiles is even between them, and goes on past them to 0 and 1", () => {
    const at = (mg: number) => Number(spreadUpTo(quantiles, mg).toFixed(6));
    expect([760_000, 795_000, 830_000, 890_000, 950_000].map(at)).toEqual([0.1, 0.3, 0.5, 0.7, 0.9]);
    expect([742_500, 700_000, 965_000, 990_000].map(at)).toEqual([0, 0, 0.95, 1]);
  });

  it("as a grid adds up the steps to the limit", () => {
    expect([-1, 0, 999, 1_000, 2_500, 3_000].map((mg) => spreadUpTo(grid, mg))).toEqual([
      0, 0, 0, 0.25, 0.75, 1,
    ]);
  });

  it("as any other function is what that says", () => {
    expect([600_000, 750_000, 900_000].map((mg) => spreadUpTo(even, mg))).toEqual([0, 0.25, 1]);
  });

  it("is surely not infinite, and practically never over its top", () => {
    for (const spread of all) {
      expect(spreadUpTo(spread, Number.POSITIVE_INFINITY)).toBe(1);
      expect(1 - spreadUpTo(spread, spreadTop(spread))).toBeLessThan(1e-15);
    }
  });

  it("never becomes less likely to stay under a higher limit", () => {
    const mg = fc.integer({ min: -10_000, max: 1_500_000 });
    fc.assert(
      fc.property(fc.constantFrom(...all), mg, mg, (spread, one, other) => {
        const [low, high] = [Math.min(one, other), Math.max(one, other)].map((each) =>
          spreadUpTo(spread, each),
        );
        expect(low).toBeLessThanOrEqual(high ?? Number.NaN);
      }),
    );
  });

  it("refuses what is no spread", () => {
    expect(() => spreadUpTo({ ...normal, deviationMg: -1 }, 1)).toThrow(RangeError);
    expect(() => spreadUpTo({ ...normal, meanMg: Number.NaN }, 1)).toThrow(RangeError);
    expect(() => spreadUpTo({ ...errors, errorsMg: [] }, 1)).toThrow("at least one error");
    const falling = [
      { chance: 0.5, mg: 2 },
      { chance: 0.6, mg: 1 },
    ];
    expect(() => spreadUpTo({ basis, kind: "quantiles", points: falling }, 1)).toThrow("rising points");
    expect(() => spreadTop({ basis, kind: "quantiles", points: falling.slice(0, 1) })).toThrow("two or more");
  });
});
