import { describe, expect, it } from "vitest";
import { packPrice } from "#lib/replenishment/pack-price";

// Breaks not in order: the highest that is reached counts, wherever it stands in the list.
const PRICES = {
  priceMinor: 3800,
  breaks: [
    { fromPacks: 10, priceMinor: 3000 },
    { fromPacks: 4, priceMinor: 3500 },
  ],
};

describe("price of a pack", () => {
  it.each([
    [1, 3800],
    [3, 3800],
    [4, 3500],
    [9, 3500],
    [10, 3000],
    [12, 3000],
  ])("at %s packs is %s each", (packs, price) => {
    expect(packPrice(PRICES, packs)).toBe(price);
  });

  it("is known from a break on where nobody said the price of a single pack", () => {
    expect(packPrice({ ...PRICES, priceMinor: null }, 3)).toBeNull();
    expect(packPrice({ ...PRICES, priceMinor: null }, 4)).toBe(3500);
  });
});
