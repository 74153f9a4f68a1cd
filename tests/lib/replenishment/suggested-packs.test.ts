import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { suggestedPacks } from "#lib/replenishment/suggested-packs";
import { amount, amountOfUnits } from "#lib/units/amount";

describe("suggested packs", () => {
  it("are the fewest that reach the target", () => {
    expect(suggestedPacks(amountOfUnits(61), amountOfUnits(240), amountOfUnits(175))).toBe(2);
    expect(suggestedPacks(amountOfUnits(65), amountOfUnits(240), amountOfUnits(175))).toBe(1);
  });

  it("are none above the target", () => {
    expect(suggestedPacks(amountOfUnits(300), amountOfUnits(240), amountOfUnits(175))).toBe(0);
  });

  it("refuse an empty pack", () => {
    expect(() => suggestedPacks(amount(0), amount(1), amount(0))).toThrow(RangeError);
  });

  it("reach the target, and one pack fewer would not", () => {
    const parts = fc.integer({ min: 0, max: 1_000_000 });
    fc.assert(
      fc.property(parts, parts, fc.integer({ min: 1, max: 100_000 }), (position, target, pack) => {
        fc.pre(target > position);
        const packs = suggestedPacks(amount(position), amount(target), amount(pack));
        expect(position + packs * pack).toBeGreaterThanOrEqual(target);
        expect(position + (packs - 1) * pack).toBeLessThan(target);
      }),
    );
  });
});
