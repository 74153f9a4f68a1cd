import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { plainAmount } from "#lib/packing/learning/plain-amount";
import { unitsOf } from "#lib/units/amount";

describe("plain amount", () => {
  it.each([
    [12.8, 0.4, 13],
    [12.6, 0.2, 12.5],
    [2.3, 0.05, 7 / 3],
    [0.74, 0.02, 0.75],
    [0.3, 0.02, 1 / 3],
    [0.04, 0.001, 0.25],
    [0, 0, 0],
  ])("%s within %s is %s", (units, tolerance, expected) => {
    expect(unitsOf(plainAmount(units, tolerance, "sheet"))).toBeCloseTo(expected, 9);
  });

  it("of what is taken whole is whole, of tape in inches, of a metre in five centimetres", () => {
    expect(unitsOf(plainAmount(2.4, 0.01, "each"))).toBe(2);
    expect(unitsOf(plainAmount(0.2, 0.01, "each"))).toBe(1);
    expect(unitsOf(plainAmount(2.71, 0.01, "foot"))).toBeCloseTo(2 + 9 / 12, 9);
    expect(unitsOf(plainAmount(0.31, 0.01, "metre"))).toBeCloseTo(0.3, 9);
  });

  it("of a sheet is never farther off than an eighth of a unit or the tolerance, from a quarter on", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.25, max: 40, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (units, tolerance) => {
          const gap = Math.abs(unitsOf(plainAmount(units, tolerance, "sheet")) - units);
          expect(gap).toBeLessThanOrEqual(Math.max(tolerance, 1 / 8) + 1e-9);
        },
      ),
    );
  });

  it("refuses numbers below 0", () => {
    expect(() => plainAmount(-1, 0, "sheet")).toThrow(RangeError);
    expect(() => plainAmount(1, Number.NaN, "sheet")).toThrow(RangeError);
  });
});
