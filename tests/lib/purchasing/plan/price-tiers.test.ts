import { describe, expect, it } from "vitest";
import { packsMinor, priceTiers } from "#lib/purchasing/plan/price-tiers";
import { plainOffer } from "./small-question";

const steps = [
  { fromPacks: 1, priceMinor: 500 },
  { fromPacks: 4, priceMinor: 450 },
  { fromPacks: 10, priceMinor: 400 },
];
const allUnits = plainOffer("paper", "north", { steps });
const incremental = plainOffer("paper", "north", { steps, kind: "incremental" });

describe("price tiers", () => {
  it("price every pack at the step reached, or only the packs from it on", () => {
    expect([1, 3, 4, 10].map((packs) => packsMinor(allUnits, packs))).toEqual([500, 1500, 1800, 4000]);
    // 3 at 500, then 450, then 400 from the tenth: added up by hand.
    expect([1, 3, 4, 10].map((packs) => packsMinor(incremental, packs))).toEqual([500, 1500, 1950, 4600]);
  });

  it("end at the most packs and leave out what begins above", () => {
    expect(priceTiers(incremental, 5)).toEqual([
      { fromPacks: 1, toPacks: 3, fixedMinor: 0, slopeMinor: 500 },
      { fromPacks: 4, toPacks: 5, fixedMinor: 150, slopeMinor: 450 },
    ]);
  });

  it("allow a later step that is dearer, and none for fewer packs than are sold", () => {
    const odd = plainOffer("paper", "north", {
      steps: [
        { fromPacks: 2, priceMinor: 10 },
        { fromPacks: 3, priceMinor: 20 },
      ],
    });
    expect([0, 2, 3].map((packs) => packsMinor(odd, packs))).toEqual([0, 20, 60]);
    expect(() => packsMinor(odd, 1)).toThrow(/offer paper of north prices, got 1/);
  });
});
