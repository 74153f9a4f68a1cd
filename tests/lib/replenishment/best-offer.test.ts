import { describe, expect, it } from "vitest";
import { bestOffer, offerPacks } from "#lib/replenishment/best-offer";
import { amountOfUnits } from "#lib/units/amount";
import { onTime } from "./on-time";

const offer = {
  offerId: "small",
  supplierId: "marram",
  supplierName: "Marram",
  delivery: onTime(9),
  pack: "roll of 175 ft",
  packAmount: amountOfUnits(175),
  priceMinor: 2625,
  breaks: [],
  breakKind: "all-units",
  volumeMl: null,
} as const;
const large = { ...offer, offerId: "large", packAmount: amountOfUnits(300), priceMinor: 3800 };
const unknown = { ...offer, offerId: "unknown", priceMinor: null };

describe("best offer", () => {
  it("has the least price a unit: 12.7 against 15 a foot", () => {
    const best = bestOffer([
      { offer: unknown, packs: 1 },
      { offer, packs: 2 },
      { offer: large, packs: 1 },
    ]);
    expect(best?.offer.offerId).toBe("large");
  });

  it("applies the price break that the packs reach", () => {
    const broken = { ...offer, breaks: [{ fromPacks: 3, priceMinor: 1750 }] };
    const bestAt = (packs: number) =>
      bestOffer([
        { offer: large, packs: 1 },
        { offer: broken, packs },
      ])?.offer.offerId;
    expect(bestAt(2)).toBe("large");
    expect(bestAt(3)).toBe("small");
  });

  it("prefers the shorter lead time between equals, and needs no price at all", () => {
    const sooner = { ...unknown, offerId: "sooner", delivery: onTime(2) };
    const best = bestOffer([
      { offer: unknown, packs: 1 },
      { offer: sooner, packs: 1 },
    ]);
    expect(best?.offer.offerId).toBe("sooner");
    expect(bestOffer([])).toBeNull();
  });

  it("prices the packs together", () => {
    expect(offerPacks({ offer, packs: 2 })).toEqual({
      offerId: "small",
      pack: "roll of 175 ft",
      packs: 2,
      priceMinor: 5250,
    });
    expect(offerPacks({ offer: unknown, packs: 2 }).priceMinor).toBeNull();
  });
});
