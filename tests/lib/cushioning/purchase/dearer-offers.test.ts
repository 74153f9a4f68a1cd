import { describe, expect, it } from "vitest";
import { dearerOffers } from "#lib/cushioning/purchase/dearer-offers";
import { plainMix, plainMixOffer } from "./small-mix";

describe("dearer offers", () => {
  const question = plainMix({
    supplies: [],
    types: [],
    offers: [
      plainMixOffer("bubble", {
        steps: [
          { fromPacks: 1, priceMinor: 1013 },
          { fromPacks: 3, priceMinor: 900 },
        ],
      }),
      plainMixOffer("wide bubble", { steps: null }),
      plainMixOffer("paper"),
    ],
  });

  it("raise each price of the supplies that are named, to the nearest minor unit", () => {
    const { offers } = dearerOffers(question, ["bubble", "wide bubble"], 0.2);
    // 1013 * 1.2 = 1215.6
    expect(offers.map(({ steps }) => steps?.map(({ priceMinor }) => priceMinor) ?? null)).toEqual([
      [1216, 1080],
      null,
      [100],
    ]);
  });

  it("are never cheaper", () => {
    expect(() => dearerOffers(question, ["bubble"], -0.1)).toThrow("share of at least 0");
  });
});
