import { describe, expect, it } from "vitest";
import { meanEstimate, shareEstimate } from "#lib/replenishment/simulation/estimate";
import { evenRandom } from "#lib/statistics/even-random";
import { poissonDraw } from "#lib/statistics/poisson-draw";

describe("a mean over runs", () => {
  it("has the sample deviation over the root of the runs as its error", () => {
    // 2, 4, 4, 6: mean 4, squares 8, 8 / 3 / 4.
    const { mean, standardError } = meanEstimate([2, 4, 4, 6]);
    expect(mean).toBe(4);
    expect(standardError).toBeCloseTo(Math.sqrt(2 / 3), 12);
  });

  it("knows no error from one run, and nothing from none", () => {
    expect(meanEstimate([3])).toEqual({ mean: 3, standardError: Infinity });
    expect(() => meanEstimate([])).toThrow(/got none/);
  });
});

describe("a share over runs", () => {
  it("is of all runs together, not the mean of their shares", () => {
    const pairs = [
      { part: 1, whole: 1 },
      { part: 0, whole: 3 },
    ];
    expect(shareEstimate(pairs)?.mean).toBe(0.25);
    expect(shareEstimate([{ part: 0, whole: 0 }])).toBeNull();
  });

  it("is off by its error: the spread of many shares that are drawn alike", () => {
    const random = evenRandom(6);
    const shares = Array.from({ length: 400 }, () =>
      shareEstimate(
        Array.from({ length: 50 }, () => {
          const part = poissonDraw(2, random);
          return { part, whole: part + poissonDraw(8, random) };
        }),
      ),
    );
    const means = shares.flatMap((share) => share?.mean ?? []);
    const seen = meanEstimate(means).standardError * Math.sqrt(means.length);
    const said = meanEstimate(shares.flatMap((share) => share?.standardError ?? [])).mean;
    expect(means).toHaveLength(400);
    expect(Math.abs(said / seen - 1)).toBeLessThan(0.12);
  });
});
