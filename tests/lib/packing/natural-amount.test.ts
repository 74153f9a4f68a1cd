import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { naturalAmount, naturalStep } from "#lib/packing/natural-amount";
import { amount, amountOfUnits, unitsOf } from "#lib/units/amount";
import { USE_UNITS } from "#lib/units/use-unit";

describe("naturalAmount", () => {
  it.each([
    [7.15, "sheet", 7.5],
    [7.5, "sheet", 7.5],
    [0.1, "piece", 0.5],
    [6.2, "foot", 6.25],
    [1.01, "metre", 1.05],
    [2.01, "strip", 3],
  ] as const)("of %s in the unit %s is %s", (theory, unit, used) => {
    expect(unitsOf(naturalAmount(amountOfUnits(theory), unit))).toBeCloseTo(used, 9);
  });

  it("is never less than the theory, and less than a step more, and does not change again", () => {
    fc.assert(
      fc.property(fc.nat(10_000_000).map(amount), fc.constantFrom(...USE_UNITS), (theory, unit) => {
        const used = naturalAmount(theory, unit);
        expect(used).toBeGreaterThanOrEqual(theory);
        expect(used - theory).toBeLessThan(naturalStep(unit));
        expect(naturalAmount(used, unit)).toBe(used);
      }),
    );
  });

  it("refuses less than nothing", () => {
    expect(() => naturalAmount(amount(-1), "sheet")).toThrow(RangeError);
  });
});
