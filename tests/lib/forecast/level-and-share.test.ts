import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { levelAndShare } from "#lib/forecast/level-and-share";
import { dampedTrend } from "#lib/forecast/methods/holt";
import { simpleSmoothing } from "#lib/forecast/methods/simple-smoothing";
import { theta } from "#lib/forecast/methods/theta";

const weeks = fc
  .tuple(fc.integer({ min: 1, max: 5 }), fc.integer({ min: 1, max: 15 }))
  .chain(([types, length]) =>
    fc.array(fc.array(fc.integer({ min: 0, max: 30 }), { minLength: length, maxLength: length }), {
      minLength: types,
      maxLength: types,
    }),
  );

describe("level of the shop and shares of its item types", () => {
  it("shares by discounted sums, with half a piece for each type", () => {
    // 6 x 0.93 + 6 + 0.5 = 12.08; 2 x 0.93 + 2 + 0.5 = 4.36; 12.08 / 16.44
    const { level, shares } = levelAndShare([
      [6, 6],
      [2, 2],
    ]);
    expect(level).toBeCloseTo(8, 9);
    expect(shares[0]).toBeCloseTo(12.08 / 16.44, 12);
    expect(shares[1]).toBeCloseTo(4.36 / 16.44, 12);
  });

  it("gives equal shares of nothing where nothing was sent", () => {
    const { level, shares } = levelAndShare([
      [0, 0, 0],
      [0, 0, 0],
    ]);
    expect(level).toBe(0);
    expect(shares).toEqual([0.5, 0.5]);
  });

  it("has shares above 0 that add up to 1, and of few weeks a level between the least and the largest", () => {
    fc.assert(
      fc.property(weeks, (series) => {
        const { level, shares } = levelAndShare(series);
        expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
        for (const share of shares) expect(share).toBeGreaterThan(0);
        const sums = (series[0] ?? []).map((_, week) =>
          series.reduce((sum, each) => sum + (each[week] ?? 0), 0),
        );
        expect(level).toBeGreaterThanOrEqual(0);
        if (sums.length >= 6) return;
        expect(level).toBeGreaterThanOrEqual(Math.min(...sums) - 1e-6);
        expect(level).toBeLessThanOrEqual(Math.max(...sums) + 1e-6);
      }),
      { numRuns: 60 },
    );
  });

  it("is the mean of simple smoothing, damped trend and theta on the sums from six weeks on", () => {
    const totals = [12, 15, 14, 19, 18, 24, 22, 27];
    const series = { values: totals, seasonLength: 1 };
    const said = [simpleSmoothing, dampedTrend, theta].map(
      (method) => method.fitted(series).forecast(1)[0] ?? 0,
    );
    const { level } = levelAndShare([totals.map((each) => each - 5), new Array<number>(8).fill(5)]);
    expect(level).toBeCloseTo(said.reduce((sum, each) => sum + each, 0) / 3, 9);
    expect(level).toBeGreaterThan(22);
  });

  it("counts a late comer's share from its first week on, over four weeks at least", () => {
    const old = new Array<number>(30).fill(10);
    const since = (age: number) => old.map((pieces, week) => (week < 30 - age ? 0 : pieces));
    for (const age of [4, 9, 20]) {
      const [, share = Number.NaN] = levelAndShare([old, since(age)]).shares;
      expect(Math.abs(share - 0.5), `${age} weeks`).toBeLessThan(0.01);
    }
    // One week of ten as four of which three had none: 10.5 / (1 + 0.93 + 0.93² + 0.93³) against about 10
    const [, first = Number.NaN] = levelAndShare([old, since(1)]).shares;
    const rate = 10.5 / (1 + 0.93 + 0.93 ** 2 + 0.93 ** 3);
    const oldRate = 10 + 0.5 / ((1 - 0.93 ** 30) / 0.07);
    expect(first).toBeCloseTo(rate / (rate + oldRate), 9);
  });

  it("refuses no series, no weeks, and series of different lengths", () => {
    for (const bad of [[], [[]], [[1, 2], [1]]]) expect(() => levelAndShare(bad)).toThrow(RangeError);
  });
});
