import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { packPrice, suggestedPacks } from "#lib/replenishment/suggested-packs";
import { amount, amountOfUnits } from "#lib/units/amount";

const offer = {
  offerId: "roll",
  supplierId: "marram",
  supplierName: "Marram",
  leadTimeDays: 9,
  pack: "roll of 175 ft",
  packAmount: amountOfUnits(175),
  priceMinor: 3800,
  breaks: [
    { fromPacks: 10, priceMinor: 3000 },
    { fromPacks: 4, priceMinor: 3500 },
  ],
};

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

describe("price of a pack", () => {
  it.each([
    [1, 3800],
    [3, 3800],
    [4, 3500],
    [10, 3000],
  ])("%s packs cost %s each", (packs, price) => {
    expect(packPrice(offer, packs)).toBe(price);
  });

  it("is not known where the offer has none", () => {
    expect(packPrice({ ...offer, priceMinor: null, breaks: [] }, 5)).toBeNull();
  });
});
