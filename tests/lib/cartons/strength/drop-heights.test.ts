import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dropHeights } from "#lib/cartons/strength/drop-heights";
import { milligrams } from "#lib/units/mass";
import { massOf } from "./packed-load";

// ISTA 1A and 2A, and ASTM D4169 from memory: tests/reference.
describe("dropHeights", () => {
  it("puts 21 lb in the row from 21 lb, and a hair less in the one below", () => {
    expect(dropHeights(massOf("21 lb"))).toMatchObject({ ista1aInches: 24, ista2aInches: 32 });
    expect(dropHeights(massOf("20 lb 15.999 oz"))).toMatchObject({ ista1aInches: 30, ista2aInches: 38 });
  });

  it("takes the higher drop of D4169 on the bound of two rows", () => {
    expect(dropHeights(massOf("20 lb")).d4169Inches).toEqual([24, 15, 9]);
    expect(dropHeights(massOf("20 lb 0.01 oz")).d4169Inches).toEqual([21, 13, 8]);
  });

  it("says nothing above its tables", () => {
    expect(dropHeights(massOf("150 lb")).ista1aInches).toBe(8);
    expect(dropHeights(massOf("150 lb 0.01 oz"))).toEqual({
      ista1aInches: null,
      ista2aInches: null,
      d4169Inches: [10, 7, 4],
    });
    expect(dropHeights(massOf("201 lb")).d4169Inches).toBeNull();
  });

  it("never drops a heavier parcel from higher", () => {
    const mass = fc.integer({ min: 1, max: 60_000_000 });
    fc.assert(
      fc.property(mass, mass, (one, other) => {
        const light = dropHeights(milligrams(Math.min(one, other))).ista1aInches;
        const heavy = dropHeights(milligrams(Math.max(one, other))).ista1aInches;
        expect(heavy).not.toBeNull();
        expect(heavy).toBeLessThanOrEqual(light ?? Number.NaN);
      }),
    );
  });

  it("refuses a parcel without weight", () => {
    expect(() => dropHeights(milligrams(0))).toThrow(RangeError);
  });
});
