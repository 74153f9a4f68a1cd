import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { deviance } from "#lib/statistics/deviance";

describe("deviance", () => {
  it("deviance(2, 1) is the example of its docstring", () => {
    expect(deviance(2, 1)).toBeCloseTo(2 * Math.LN2 - 1, 15);
  });

  it("close to the mean is gap^2 / (2 mean) (1 - gap / (3 mean)), its Taylor series", () => {
    const gap = 2 ** -20;
    expect(Math.abs(deviance(1 + gap, 1) / ((gap ** 2 / 2) * (1 - gap / 3)) - 1)).toBeLessThan(1e-11);
  });

  it("is 0 at the mean, above 0 elsewhere, and the same formula on both sides of the change", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 1000, noNaN: true }),
        fc.double({ min: 0.5, max: 2, noNaN: true }),
        (mean, ratio) => {
          const x = mean * ratio;
          expect(deviance(mean, mean)).toBe(0);
          expect(deviance(x, mean)).toBeGreaterThanOrEqual(0);
          expect(Math.abs(deviance(x, mean) - (x * Math.log(x / mean) + mean - x))).toBeLessThan(
            1e-15 * (x + mean),
          );
        },
      ),
    );
  });

  it.each([
    [0, 1],
    [1, 0],
    [-1, 1],
    [Number.NaN, 1],
    [1, Infinity],
  ])("refuses %s of %s", (x, mean) => {
    expect(() => deviance(x, mean)).toThrow(RangeError);
  });
});
