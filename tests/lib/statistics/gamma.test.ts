import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { gammaDensity, gammaExpectedShortage, gammaTails } from "#lib/statistics/gamma";

const gamma = fc.record({
  shape: fc.double({ min: 0.05, max: 300, noNaN: true }),
  scale: fc.double({ min: 0.01, max: 100, noNaN: true }),
});
const ratio = fc.double({ min: 0.01, max: 5, noNaN: true });

describe("gamma distribution", () => {
  it("gives the examples of its docstrings", () => {
    const of = { shape: 1, scale: 2 };
    expect(gammaDensity(2, of)).toBeCloseTo(0.5 / Math.E, 15);
    expect(gammaTails(2, of).upper).toBeCloseTo(1 / Math.E, 15);
    expect(gammaExpectedShortage(2, of)).toBeCloseTo(2 / Math.E, 15);
  });

  it("has a density that is the slope of its distribution function", () => {
    const shape = fc.double({ min: 0.05, max: 100, noNaN: true });
    fc.assert(
      fc.property(shape, fc.double({ min: 0.3, max: 2, noNaN: true }), (ofShape, at) => {
        const of = { shape: ofShape, scale: 3 };
        const x = at * of.shape * of.scale;
        const step = 1e-5 * x;
        const rise = gammaTails(x + step, of).lower - gammaTails(x - step, of).lower;
        expect(Math.abs(gammaDensity(x, of) * 2 * step - rise)).toBeLessThan(1e-6 * rise + 1e-14);
      }),
    );
  });

  it("has two tails of 1, and the lower rises", () => {
    fc.assert(
      fc.property(gamma, ratio, (of, at) => {
        const x = at * of.shape * of.scale;
        const { lower, upper } = gammaTails(x, of);
        expect(lower + upper).toBeCloseTo(1, 14);
        expect(gammaTails(x * 1.01, of).lower).toBeGreaterThanOrEqual(lower - 1e-14);
      }),
    );
  });

  it("has an expected shortage whose slope is the share above", () => {
    fc.assert(
      fc.property(gamma, ratio, (of, at) => {
        const mean = of.shape * of.scale;
        const x = at * mean;
        const step = 1e-4 * x;
        const fall = gammaExpectedShortage(x - step, of) - gammaExpectedShortage(x + step, of);
        expect(Math.abs(fall / (2 * step) - gammaTails(x, of).upper)).toBeLessThan(1e-4);
      }),
    );
  });

  it("at and below 0 has the limits", () => {
    expect([0.5, 1, 2].map((shape) => gammaDensity(0, { shape, scale: 4 }))).toEqual([Infinity, 0.25, 0]);
    expect(gammaDensity(-1, { shape: 2, scale: 4 })).toBe(0);
    expect(gammaTails(-1, { shape: 2, scale: 4 })).toEqual({ lower: 0, upper: 1 });
    expect(gammaExpectedShortage(-1, { shape: 2, scale: 4 })).toBe(9);
  });

  it.each([
    [Infinity, 1, 1],
    [Number.NaN, 1, 1],
    [1, 0, 1],
    [1, 1, -1],
    [1, Infinity, 1],
  ])("refuses x %s with shape %s and scale %s", (x, shape, scale) => {
    expect(() => gammaDensity(x, { shape, scale })).toThrow(RangeError);
    expect(() => gammaTails(x, { shape, scale })).toThrow(RangeError);
    expect(() => gammaExpectedShortage(x, { shape, scale })).toThrow(RangeError);
  });
});
