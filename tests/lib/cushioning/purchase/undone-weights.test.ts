import { describe, expect, it } from "vitest";
import { undoneWeights } from "#lib/cushioning/purchase/undone-weights";
import { plainMix, plainMixOffer, plainMixSupplier, plainWay } from "./small-mix";

describe("weights of what is undone", () => {
  it("are far above a pack with its delivery, and above the dearest parcel", () => {
    const question = plainMix({
      supplies: [],
      suppliers: [plainMixSupplier("north", { deliveryMinor: 500 })],
      offers: [plainMixOffer("paper", { steps: [{ fromPacks: 1, priceMinor: 2500 }] })],
      types: [{ id: "cup", parcels: 4, ways: [plainWay("paper", "paper", 1, 900)] }],
    });
    expect(undoneWeights(question)).toEqual({ parcel: 300_000, share: 60_000 });
    const dear = {
      ...question,
      types: [{ id: "urn", parcels: 1, ways: [plainWay("paper", "paper", 1, 90_000)] }],
    };
    expect(undoneWeights(dear).parcel).toBe(1_800_000);
  });
});
