import { describe, expect, it } from "vitest";
import { evenRandom } from "#lib/statistics/even-random";
import { gammaTails } from "#lib/statistics/gamma";
import { gammaDraw } from "#lib/statistics/gamma-draw";

describe("a gamma draw", () => {
  it.each([0.05, 0.4, 1, 2.5, 40])("falls below each point with its chance: shape %s", (shape) => {
    const random = evenRandom(2);
    const gamma = { shape, scale: 3 };
    const draws = Array.from({ length: 40_000 }, () => gammaDraw(gamma, random));
    for (const ratio of [0.01, 0.3, 0.8, 1, 1.5, 3]) {
      const share = gammaTails(ratio * 3 * shape, gamma).lower;
      const found = draws.filter((draw) => draw <= ratio * 3 * shape).length / draws.length;
      // 3.5 standard errors; a draw or so where next to none or all lie below.
      const allowed = 3.5 * Math.sqrt((share * (1 - share)) / draws.length) + 1 / draws.length;
      expect(Math.abs(found - share)).toBeLessThan(allowed);
    }
  });

  it("asks for a shape and a scale", () => {
    expect(() => gammaDraw({ shape: 0, scale: 1 }, () => 0.5)).toThrow(/got 0 and 1/);
    expect(() => gammaDraw({ shape: 1, scale: Infinity }, () => 0.5)).toThrow(RangeError);
  });
});
