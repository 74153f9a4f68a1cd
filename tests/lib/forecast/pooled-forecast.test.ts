import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { pooledForecast } from "#lib/forecast/pooled-forecast";

const weeks = fc
  .tuple(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 1, max: 14 }))
  .chain(([types, length]) =>
    fc.array(fc.array(fc.integer({ min: 0, max: 20 }), { minLength: length, maxLength: length }), {
      minLength: types,
      maxLength: types,
    }),
  );

describe("pooled forecast of the coming weeks' sums", () => {
  it("is steps times level times share, spread as Poisson while too few weeks were seen", () => {
    const { means, dispersions, quantiles } = pooledForecast(
      [
        [6, 6],
        [2, 2],
      ],
      3,
    );
    // Shares as discounted sums 12.08 and 4.36 of 16.44; the level is 8.
    expect(means[0]).toBeCloseTo((3 * 8 * 12.08) / 16.44, 6);
    expect(means[1]).toBeCloseTo((3 * 8 * 4.36) / 16.44, 6);
    expect(dispersions).toEqual([0, 0]);
    // Poisson with mean 17.635: 0.943 up to 24, 0.963 up to 25; with mean 6.365: 0.940 up to 10, 0.970 up to 11.
    expect(quantiles(0.95)).toEqual([25, 11]);
  });

  it("spreads more for types whose past sums were far off", () => {
    const wild = Array.from({ length: 30 }, (_, week) => (week % 10 < 5 ? 0 : 20));
    const calm = new Array<number>(30).fill(10);
    const [wildSpread = 0, calmSpread = 0] = pooledForecast([wild, calm], 3).dispersions;
    expect(wildSpread).toBeGreaterThan(calmSpread);
  });

  it("has finite means that are not below 0, and quantiles that rise with the chance", () => {
    fc.assert(
      fc.property(weeks, fc.integer({ min: 1, max: 4 }), (series, steps) => {
        const { means, dispersions, quantiles } = pooledForecast(series, steps);
        for (const number of [...means, ...dispersions]) {
          expect(Number.isFinite(number)).toBe(true);
          expect(number).toBeGreaterThanOrEqual(0);
        }
        const [half, most, nearlyAll] = [0.5, 0.9, 0.99].map(quantiles);
        for (const index of series.keys()) {
          expect(most?.[index]).toBeGreaterThanOrEqual(half?.[index] ?? Number.NaN);
          expect(nearlyAll?.[index]).toBeGreaterThanOrEqual(most?.[index] ?? Number.NaN);
        }
      }),
      { numRuns: 40 },
    );
  });

  it("expects the shop's level however the pieces are parted into types", () => {
    fc.assert(
      fc.property(weeks, (series) => {
        const together = (series[0] ?? []).map((_, week) =>
          series.reduce((total, each) => total + (each[week] ?? 0), 0),
        );
        const sum = pooledForecast(series, 2).means.reduce((total, mean) => total + mean, 0);
        expect(sum).toBeCloseTo(pooledForecast([together], 2).means[0] ?? Number.NaN, 8);
      }),
      { numRuns: 30 },
    );
  });

  it("refuses series of different lengths", () => {
    expect(() => pooledForecast([[1, 2], [1]], 3)).toThrow(RangeError);
  });
});
