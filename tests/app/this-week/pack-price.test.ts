import { describe, expect, it } from "vitest";
import { packPrice } from "#app/this-week/pack-price.ts";

describe("pack price", () => {
  const prices = {
    priceMinor: 500,
    breaks: [
      { fromPacks: 4, priceMinor: 450 },
      { fromPacks: 10, priceMinor: 400 },
    ],
  };

  it("is the price from the first pack on below every break", () => {
    expect(packPrice(prices, 3)).toBe(500);
  });

  it("is the price of the highest break that is reached, for all packs", () => {
    expect(packPrice(prices, 4)).toBe(450);
    expect(packPrice(prices, 12)).toBe(400);
  });

  it("is unknown where nobody said a price", () => {
    expect(packPrice({ priceMinor: null, breaks: [] }, 2)).toBeNull();
  });
});
