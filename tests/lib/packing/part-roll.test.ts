import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { amountLeftOnRoll } from "#lib/packing/part-roll";
import { amountOfUnits, unitsOf } from "#lib/units/amount";

const bubble = { coreUm: 76_200, fullUm: 469_900, fullAmount: amountOfUnits(175) };

describe("amountLeftOnRoll", () => {
  it("finds 70.9 ft on a 175 ft roll at 12 in across", () => {
    expect(unitsOf(amountLeftOnRoll({ ...bubble, outerUm: 304_800 }))).toBeCloseTo(70.9, 1);
  });

  it("finds all of a full roll and nothing on a bare core", () => {
    expect(amountLeftOnRoll({ ...bubble, outerUm: bubble.fullUm })).toBe(bubble.fullAmount);
    expect(amountLeftOnRoll({ ...bubble, outerUm: bubble.coreUm })).toBe(0);
  });

  it.each([76_199, 469_901, Number.NaN])("refuses an outer diameter of %s µm", (outerUm) => {
    expect(() => amountLeftOnRoll({ ...bubble, outerUm })).toThrow(RangeError);
  });

  it("refuses a full roll no wider than its core", () => {
    expect(() => amountLeftOnRoll({ ...bubble, fullUm: 76_200, outerUm: 76_200 })).toThrow(RangeError);
  });

  it("never falls as the roll gets wider, and stays within the full roll", () => {
    const diameter = fc.integer({ min: bubble.coreUm, max: bubble.fullUm });
    fc.assert(
      fc.property(diameter, diameter, (one, other) => {
        const smaller = amountLeftOnRoll({ ...bubble, outerUm: Math.min(one, other) });
        const larger = amountLeftOnRoll({ ...bubble, outerUm: Math.max(one, other) });
        expect(0 <= smaller && smaller <= larger && larger <= bubble.fullAmount).toBe(true);
      }),
    );
  });

  it("agrees with the length of the strip found from its thickness", () => {
    const thickness = (Math.PI / 4) * ((469_900 ** 2 - 76_200 ** 2) / (175 * 304_800));
    fc.assert(
      fc.property(fc.integer({ min: bubble.coreUm, max: bubble.fullUm }), (outerUm) => {
        const strip = ((Math.PI / 4) * (outerUm ** 2 - 76_200 ** 2)) / thickness / 304_800;
        expect(unitsOf(amountLeftOnRoll({ ...bubble, outerUm }))).toBeCloseTo(strip, 3);
      }),
    );
  });
});
