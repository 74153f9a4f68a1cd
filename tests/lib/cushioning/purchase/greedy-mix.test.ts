import { describe, expect, it } from "vitest";
import { costedMix } from "#lib/cushioning/purchase/costed-mix";
import { greedyMix } from "#lib/cushioning/purchase/greedy-mix";
import { everyMix } from "./every-mix";
import { plainMix, plainMixOffer, plainMixSupplier, plainMixSupply, plainWay, smallMix } from "./small-mix";

describe("a greedy mix", () => {
  it("buys what packs everything, in the cheaper way", () => {
    const question = plainMix({
      supplies: [plainMixSupply("paper"), plainMixSupply("bubble")],
      offers: [
        plainMixOffer("paper", { unitsPerPack: 20 }),
        plainMixOffer("bubble", { unitsPerPack: 10, steps: [{ fromPacks: 1, priceMinor: 900 }] }),
      ],
      types: [
        {
          id: "cup",
          parcels: 10,
          ways: [plainWay("paper", "paper", 6, 650), plainWay("bubble", "bubble", 2, 600)],
        },
      ],
    });
    // Paper: 3 packs, 300 + 6500 = 6800; bubble: 2 packs, 1800 + 6000 = 7800.
    expect(greedyMix(question)).toEqual({
      lines: [{ offerId: "paper of north", packs: 3 }],
      split: [{ typeId: "cup", style: "paper", parcels: 10 }],
    });
  });

  it("buys nothing where no order may be placed", () => {
    const question = plainMix({
      supplies: [plainMixSupply("paper", { onHand: 3 })],
      suppliers: [plainMixSupplier("north", { leastOrderMinor: 5000 })],
      offers: [plainMixOffer("paper", { mostPacks: 5 })],
      types: [{ id: "cup", parcels: 10, ways: [plainWay("paper", "paper", 1, 650)] }],
    });
    expect(greedyMix(question)).toEqual({
      lines: [],
      split: [{ typeId: "cup", style: "paper", parcels: 3 }],
    });
  });

  it("buys two supplies at once where one alone packs nothing", () => {
    // 20 parcels take a sheet and a carton each, packs of 10 at 100; with 200 in cash one pack of each packs 10.
    const way = plainWay("paper", "paper", 1, 650);
    const question = plainMix({
      supplies: [plainMixSupply("paper"), plainMixSupply("carton")],
      offers: [plainMixOffer("paper", { unitsPerPack: 10 }), plainMixOffer("carton", { unitsPerPack: 10 })],
      types: [
        {
          id: "cup",
          parcels: 20,
          ways: [{ ...way, takes: [...way.takes, { supplyId: "carton", units: 1 }] }],
        },
      ],
      limits: { cashMinor: 200, litres: null },
    });
    expect(greedyMix(question)).toEqual({
      lines: [
        { offerId: "paper of north", packs: 1 },
        { offerId: "carton of north", packs: 1 },
      ],
      split: [{ typeId: "cup", style: "paper", parcels: 10 }],
    });
  });

  it("is never better than the best of all mixes, and mostly near it where that leaves nothing undone", () => {
    let near = 0;
    let whole = 0;
    for (let seed = 1; seed <= 60; seed++) {
      const question = smallMix(seed, 2);
      const { lack, costs } = costedMix(question, greedyMix(question));
      const best = everyMix(question);
      expect(lack.parcels).toBeGreaterThan(best.parcels - 1e-6);
      if (best.parcels + best.share > 0) continue;
      whole++;
      if (lack.parcels + lack.share > 0) continue;
      expect(costs.totalMinor).toBeGreaterThan(best.totalMinor - 1e-6);
      if (costs.totalMinor - best.totalMinor < 0.05 * costs.grossMinor) near++;
    }
    expect(whole).toBeGreaterThan(10);
    expect(near / whole).toBeGreaterThan(0.7);
  });
});
