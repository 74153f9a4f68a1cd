import { describe, expect, it } from "vitest";
import { planParts } from "#lib/purchasing/plan/plan-model";
import { isCheaper, sparedByWeek, standInsFirst } from "#lib/purchasing/plan/stand-ins-first";
import { plainOffer, plainQuestion, plainSupplier, plainSupply } from "./small-question";

const pair = { fromSupplyId: "small", toSupplyId: "large", ratio: 2 };

/** Large: 2 in stock, 3 a week, bought again in week 2; small: 7 in stock, 1 a week. */
function parts(smallOffer: object | null) {
  const question = plainQuestion({
    supplies: [plainSupply("large", [3, 3, 3], { stock: 2 }), plainSupply("small", [1, 1, 1], { stock: 7 })],
    suppliers: [plainSupplier("north", 3)],
    offers: [
      plainOffer("large", "north", { leadWeeks: 2 }),
      ...(smallOffer === null ? [] : [plainOffer("small", "north", smallOffer)]),
    ],
    substitutes: [pair],
  });
  return { question, supplies: planParts(question).supplies };
}
const drawn = (smallOffer: object | null, isCheap: boolean) => {
  const { question, supplies } = parts(smallOffer);
  return standInsFirst(question, supplies, isCheap ? [pair] : []).map(({ week, units }) => [week, units]);
};

describe("what stands in before anything is ordered", () => {
  it("is all saved material beyond its own need", () => {
    // Seven less three of its own use: four do the work of two.
    expect(drawn(null, false)).toEqual([[0, 2]]);
  });

  it("is what can be bought again, where the other runs short before anything arrives", () => {
    // One lacks in week 0, then three; small is bought again in week 1, so 6 of it are free in week 0.
    expect(drawn({ leadWeeks: 1 }, false)).toEqual([
      [0, 1],
      [1, 1.5],
    ]);
  });

  it("is all the need where it is clearly cheaper", () => {
    expect(drawn({ leadWeeks: 1 }, true)).toEqual([
      [0, 3],
      [1, 3],
      [2, 3],
    ]);
    const price = (minor: number) =>
      isCheaper(pair, parts({ steps: [{ fromPacks: 1, priceMinor: minor }] }).supplies);
    expect([price(47), price(48)]).toEqual([true, false]);
    expect(isCheaper(pair, parts(null).supplies)).toBe(false);
  });

  it("spares the one and costs the other", () => {
    const { question } = parts(null);
    const standIns = [{ fromSupplyId: "small", toSupplyId: "large", week: 1, units: 1.5 }];
    expect(sparedByWeek(question, standIns, "large")).toEqual([0, 1.5, 0]);
    expect(sparedByWeek(question, standIns, "small")).toEqual([0, -3, 0]);
  });
});
