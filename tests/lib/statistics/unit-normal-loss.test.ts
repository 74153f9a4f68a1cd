import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { normalCumulative } from "#lib/statistics/normal-cumulative";
import { unitNormalLoss } from "#lib/statistics/unit-normal-loss";

describe("unit normal loss", () => {
  it("unitNormalLoss(1) is the example of its docstring", () => {
    expect(unitNormalLoss(1)).toBeCloseTo(0.08331547058768628, 15);
  });

  it("is the area above the distribution function", () => {
    const width = 0.01;
    const above = Array.from(
      { length: 1200 },
      (_, step) => width * normalCumulative(-(1 + width * (step + 0.5))),
    );
    expect(unitNormalLoss(1)).toBeCloseTo(
      above.reduce((sum, part) => sum + part, 0),
      5,
    );
  });

  it("below the mean is longer by the distance: G(-z) = G(z) + z", () => {
    fc.assert(
      fc.property(fc.double({ min: -30, max: 30, noNaN: true }), (z) => {
        expect(unitNormalLoss(-z)).toBeCloseTo(unitNormalLoss(z) + z, 12);
      }),
    );
  });

  it("falls, by no more than the step", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -30, max: 30, noNaN: true }),
        fc.double({ min: 0.001, max: 5, noNaN: true }),
        (z, step) => {
          const fall = unitNormalLoss(z) - unitNormalLoss(z + step);
          expect(fall).toBeGreaterThan(0);
          expect(fall).toBeLessThanOrEqual(step + 1e-13);
        },
      ),
    );
  });

  it.each([Number.NaN, Infinity, -Infinity])("refuses %s", (z) => {
    expect(() => unitNormalLoss(z)).toThrow(RangeError);
  });
});
