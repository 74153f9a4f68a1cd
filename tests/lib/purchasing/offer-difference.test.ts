import { describe, expect, it } from "vitest";
import { offerDifference } from "#lib/purchasing/offer-difference";
import { amountOfUnits } from "#lib/units/amount";

const offer = {
  packAmount: amountOfUnits(188),
  priceMinor: 2_600,
  breakKind: "all-units" as const,
  breaks: [{ fromPacks: 4, priceMinor: 2_450 }],
};
const came = { packs: 2, packAmount: amountOfUnits(188), priceMinor: 2_600 };

describe("difference between an offer and what came", () => {
  it("is none where pack and price are as offered, or no price is known", () => {
    expect(offerDifference(offer, came, 2)).toBeNull();
    expect(offerDifference(offer, { ...came, priceMinor: null }, 2)).toBeNull();
  });

  it("tells another roll length and another price apart", () => {
    const other = { ...came, packAmount: amountOfUnits(175), priceMinor: 2_800 };
    expect(offerDifference(offer, other, 2)).toEqual({
      pack: { from: amountOfUnits(188), to: amountOfUnits(175) },
      price: { from: 2_600, to: 2_800, fromPacks: null },
    });
  });

  it("names the price break that the whole order reached, also where only a part came", () => {
    expect(offerDifference(offer, { ...came, packs: 1, priceMinor: 2_500 }, 4)?.price).toEqual({
      from: 2_450,
      to: 2_500,
      fromPacks: 4,
    });
    expect(offerDifference(offer, { ...came, packs: 1, priceMinor: 2_450 }, 4)).toBeNull();
  });

  it("leaves the prices alone where an incremental break was reached", () => {
    const steps = { ...offer, breakKind: "incremental" as const };
    expect(offerDifference(steps, { ...came, priceMinor: 2_500 }, 4)).toBeNull();
    expect(offerDifference(steps, { ...came, priceMinor: 2_500 }, 3)?.price?.to).toBe(2_500);
  });
});
