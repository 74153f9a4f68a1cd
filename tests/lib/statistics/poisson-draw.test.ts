import { describe, expect, it } from "vitest";
import { evenRandom } from "#lib/statistics/even-random";
import { poissonTails } from "#lib/statistics/poisson";
import { poissonDraw } from "#lib/statistics/poisson-draw";

describe("a Poisson draw", () => {
  it.each([0.2, 3, 29, 75])("falls at or below each count with its chance: mean %s", (mean) => {
    const random = evenRandom(4);
    const draws = Array.from({ length: 40_000 }, () => poissonDraw(mean, random));
    for (const ratio of [0, 0.5, 0.9, 1, 1.2, 2]) {
      const count = Math.floor(ratio * mean);
      const share = poissonTails(count, mean).lower;
      const found = draws.filter((draw) => draw <= count).length / draws.length;
      const allowed = 3.5 * Math.sqrt((share * (1 - share)) / draws.length) + 1 / draws.length;
      expect(Math.abs(found - share)).toBeLessThan(allowed);
    }
  });

  it("takes one number for a small mean, by inversion", () => {
    // 1 / e = 0.368 none, 0.736 at most one, 0.920 at most two.
    expect([0.36, 0.37, 0.73, 0.74, 0.93].map((chance) => poissonDraw(1, () => chance))).toEqual([
      0, 1, 1, 2, 3,
    ]);
  });

  it("is nothing at a mean of 0, and ends at the end of the source", () => {
    expect(poissonDraw(0, () => 1 - 2 ** -53)).toBe(0);
    expect(poissonDraw(2, () => 1 - 2 ** -53)).toBeLessThan(40);
    expect(() => poissonDraw(-1, () => 0.5)).toThrow(/mean from 0, got -1/);
  });
});
