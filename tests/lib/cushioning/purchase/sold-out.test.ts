import { describe, expect, it } from "vitest";
import { soldOut } from "#lib/cushioning/purchase/sold-out";
import { plainMix, plainMixOffer } from "./small-mix";

describe("sold-out supplies", () => {
  it("have no pack to be had, and the others stay", () => {
    const offers = [plainMixOffer("bubble"), plainMixOffer("paper", { mostPacks: 4 })];
    const question = soldOut(plainMix({ supplies: [], types: [], offers }), ["bubble"]);
    expect(question.offers.map(({ mostPacks }) => mostPacks)).toEqual([0, 4]);
  });
});
