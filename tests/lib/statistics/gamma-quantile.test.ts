import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { gammaTails } from "#lib/statistics/gamma";
import { gammaQuantile } from "#lib/statistics/gamma-quantile";

describe("gamma quantile", () => {
  it("gammaQuantile(0.95, { shape: 4, scale: 2.5 }) is the example of its docstring", () => {
    expect(gammaQuantile(0.95, { shape: 4, scale: 2.5 })).toBeCloseTo(19.384141319831816, 11);
  });

  it("with shape 1 is that of the exponential distribution, -scale ln(1 - p)", () => {
    for (const probability of [1e-9, 0.2, 0.5, 0.501, 0.95, 0.9999]) {
      const exact = -3 * Math.log1p(-probability);
      expect(Math.abs(gammaQuantile(probability, { shape: 1, scale: 3 }) / exact - 1)).toBeLessThan(1e-12);
    }
  });

  it("is undone by the distribution function, in both tails", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-9, max: 1 - 1e-9, noNaN: true }),
        fc.double({ min: 0.05, max: 5000, noNaN: true }),
        fc.double({ min: 0.01, max: 100, noNaN: true }),
        (probability, shape, scale) => {
          const { lower, upper } = gammaTails(gammaQuantile(probability, { shape, scale }), { shape, scale });
          expect(Math.abs(lower / probability - 1)).toBeLessThan(1e-11);
          expect(Math.abs(upper / (1 - probability) - 1)).toBeLessThan(1e-11);
        },
      ),
    );
  });

  it("rises with the probability", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 998 }),
        fc.double({ min: 0.05, max: 500, noNaN: true }),
        (part, shape) => {
          const at = (thousandths: number) => gammaQuantile(thousandths / 1000, { shape, scale: 1 });
          expect(at(part + 1)).toBeGreaterThan(at(part));
        },
      ),
    );
  });

  it("is 0 where it is too small for a number", () => {
    expect(gammaQuantile(0.001, { shape: 0.001, scale: 1 })).toBe(0);
  });

  it.each([
    [0, 1, 1],
    [1, 1, 1],
    [0.5, 0, 1],
    [0.5, 1, -1],
    [0.5, Infinity, 1],
  ])("refuses probability %s with shape %s and scale %s", (probability, shape, scale) => {
    expect(() => gammaQuantile(probability, { shape, scale })).toThrow(RangeError);
  });
});
