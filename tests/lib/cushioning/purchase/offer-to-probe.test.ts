import { describe, expect, it } from "vitest";
import { offerToProbe } from "#lib/cushioning/purchase/offer-to-probe";
import { plainMix, plainMixOffer } from "./small-mix";

const question = plainMix({
  supplies: [],
  types: [],
  offers: [
    plainMixOffer("bubble", { id: "small", unitsPerPack: 10, steps: [{ fromPacks: 1, priceMinor: 300 }] }),
    plainMixOffer("bubble", { id: "large", unitsPerPack: 50, steps: [{ fromPacks: 1, priceMinor: 1000 }] }),
    plainMixOffer("paper", { id: "sheets" }),
    plainMixOffer("felt", { id: "felt", steps: null }),
  ],
});
const bought = (offerId: string, packs: number) => {
  const line = { offerId, packs, goodsMinor: 0 };
  return { orders: [{ supplierId: "north", lines: [line], goodsMinor: 0, deliveryMinor: 0 }] };
};

describe("the offer of which another pack is asked about", () => {
  it("is the one that the plan buys", () => {
    expect(offerToProbe(question, bought("small", 1), "bubble")?.id).toBe("small");
  });

  it("is the cheapest by the unit where the plan buys none", () => {
    expect(offerToProbe(question, bought("sheets", 4), "bubble")?.id).toBe("large");
  });

  it("is none where no price is known", () => {
    expect(offerToProbe(question, { orders: [] }, "felt")).toBeNull();
    expect(offerToProbe(question, { orders: [] }, "tape")).toBeNull();
  });
});
