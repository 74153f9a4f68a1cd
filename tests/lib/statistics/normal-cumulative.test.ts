import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { normalCumulative } from "#lib/statistics/normal-cumulative";
import { normalDensity } from "#lib/statistics/normal-density";
import { normalQuantile } from "#lib/statistics/normal-quantile";

const z = fc.double({ min: -37, max: 37, noNaN: true });

describe("normal distribution function", () => {
  it("normalCumulative(1.6448536269514722) is the example of its docstring", () => {
    expect(normalCumulative(1.6448536269514722)).toBeCloseTo(0.95, 14);
  });

  it("lies between the two bounds of the tail, phi(z) (1/z - 1/z^3) and phi(z) (1/z - 1/z^3 + 3/z^5) (from memory)", () => {
    fc.assert(
      fc.property(fc.double({ min: 3, max: 37, noNaN: true }), (far) => {
        const low = normalDensity(far) * (1 / far - 1 / far ** 3);
        expect(normalCumulative(-far)).toBeGreaterThan(low);
        expect(normalCumulative(-far)).toBeLessThan(low + (normalDensity(far) * 3) / far ** 5);
      }),
    );
  });

  it("and the share above add up to 1", () => {
    fc.assert(
      fc.property(z, (at) => {
        expect(normalCumulative(at) + normalCumulative(-at)).toBeCloseTo(1, 14);
      }),
    );
  });

  it("never falls", () => {
    fc.assert(
      fc.property(z, fc.double({ min: 1e-6, max: 5, noNaN: true }), (at, step) => {
        expect(normalCumulative(at + step)).toBeGreaterThanOrEqual(normalCumulative(at));
      }),
    );
  });

  it("is undone by the quantile, also deep in the tail", () => {
    fc.assert(
      fc.property(fc.double({ min: -37, max: 5, noNaN: true }), (at) => {
        const probability = normalCumulative(at);
        const slack = 1e-13 + 2e-16 / normalDensity(Math.max(0, at));
        expect(Math.abs(normalQuantile(probability) - at)).toBeLessThan(slack);
      }),
    );
  });

  it("is 0 and 1 at the ends and refuses what is no number", () => {
    expect(normalCumulative(-Infinity)).toBe(0);
    expect(normalCumulative(Infinity)).toBe(1);
    expect(() => normalCumulative(Number.NaN)).toThrow(RangeError);
  });
});
