import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { unitNormalLoss } from "#lib/statistics/unit-normal-loss";
import { unitNormalLossInverse } from "#lib/statistics/unit-normal-loss-inverse";

describe("inverse of the unit normal loss", () => {
  it("unitNormalLossInverse(0.1) is the example of its docstring", () => {
    expect(unitNormalLossInverse(0.1)).toBeCloseTo(0.902346347510035, 14);
  });

  it("gives the z back, from far below to far above the mean", () => {
    fc.assert(
      fc.property(fc.double({ min: -50, max: 36, noNaN: true }), (z) => {
        expect(unitNormalLossInverse(unitNormalLoss(z))).toBeCloseTo(z, 12);
      }),
    );
  });

  it("gives the loss back", () => {
    fc.assert(
      fc.property(fc.double({ min: -250, max: 6, noNaN: true }), (power) => {
        const loss = 10 ** power;
        expect(Math.abs(unitNormalLoss(unitNormalLossInverse(loss)) / loss - 1)).toBeLessThan(1e-11);
      }),
    );
  });

  it.each([0, -1, 1e-310, Infinity, Number.NaN])("refuses %s", (loss) => {
    expect(() => unitNormalLossInverse(loss)).toThrow(RangeError);
  });
});
