import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { levelAndShare } from "#lib/forecast/level-and-share";

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

  it("has shares above 0 that add up to 1, and a level between the least and the largest week", () => {
    fc.assert(
      fc.property(weeks, (series) => {
        const { level, shares } = levelAndShare(series);
        expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
        for (const share of shares) expect(share).toBeGreaterThan(0);
        const sums = (series[0] ?? []).map((_, week) =>
          series.reduce((sum, each) => sum + (each[week] ?? 0), 0),
        );
        expect(level).toBeGreaterThanOrEqual(Math.min(...sums) - 1e-6);
        expect(level).toBeLessThanOrEqual(Math.max(...sums) + 1e-6);
      }),
      { numRuns: 60 },
    );
  });

  it("refuses no series, no weeks, and series of different lengths", () => {
    for (const bad of [[], [[]], [[1, 2], [1]]]) expect(() => levelAndShare(bad)).toThrow(RangeError);
  });
});
