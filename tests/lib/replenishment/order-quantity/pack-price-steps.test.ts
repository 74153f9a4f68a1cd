import { describe, expect, it } from "vitest";
import { packPriceSteps } from "#lib/replenishment/order-quantity/pack-price-steps";
import { goodsCost } from "#lib/replenishment/order-quantity/price-steps";
import { packsPrice } from "#lib/replenishment/pack-price";

const breaks = [
  { fromPacks: 10, priceMinor: 400 },
  { fromPacks: 4, priceMinor: 450 },
];

describe("price steps of an offer", () => {
  it.each(["all-units", "incremental"] as const)(
    "come to the same as the price of its packs: %s",
    (breakKind) => {
      const offer = { priceMinor: 500, breaks, breakKind };
      for (let packs = 1; packs < 25; packs += 1) {
        expect(goodsCost(packPriceSteps(offer), packs)).toBe(packsPrice(offer, packs));
      }
    },
  );

  it("are all-units where nothing else is said, and a break from the first pack is the price", () => {
    const offer = { priceMinor: 500, breaks: [{ fromPacks: 1, priceMinor: 480 }] };
    expect(packPriceSteps(offer)).toEqual({ steps: [{ from: 0, price: 480 }], pricing: "all-units" });
  });

  it("need one break from a number of packs", () => {
    const twice = [...breaks, { fromPacks: 4, priceMinor: 1 }];
    expect(() => packPriceSteps({ priceMinor: 500, breaks: twice })).toThrow(
      /one break from 4 packs, got two/,
    );
  });
});
