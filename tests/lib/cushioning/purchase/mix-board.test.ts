import { describe, expect, it } from "vitest";
import { costedMix } from "#lib/cushioning/purchase/costed-mix";
import { boardStanding, mixBoard } from "#lib/cushioning/purchase/mix-board";
import { plainMix, plainMixOffer, plainMixSupplier, plainMixSupply, plainWay, smallMix } from "./small-mix";

describe("a purchase on the board", () => {
  it("comes to what the same mix is costed at", () => {
    for (let seed = 1; seed <= 40; seed++) {
      const question = smallMix(seed, 3);
      const board = mixBoard(question);
      const packs = question.offers.map(({ mostPacks }) => Math.min(2, mostPacks ?? 2));
      const standing = boardStanding(board, packs);
      const lines = question.offers.map(({ id }, index) => ({ offerId: id, packs: packs[index] ?? 0 }));
      const mix = costedMix(question, { lines, split: standing.split });
      expect(standing.costs.totalMinor).toBeCloseTo(mix.costs.totalMinor, 6);
      expect(standing.lack.parcels).toBeCloseTo(mix.lack.parcels, 6);
      expect(standing.lack.share).toBeCloseTo(mix.lack.share, 5);
    }
  });

  it("gives what is scarce to the type that loses most by its other way", () => {
    const question = plainMix({
      supplies: [plainMixSupply("paper", { onHand: 100 }), plainMixSupply("bubble", { onHand: 4 })],
      offers: [],
      types: [
        {
          id: "cup",
          parcels: 2,
          ways: [plainWay("paper", "paper", 4, 620), plainWay("bubble", "bubble", 2, 600)],
        },
        {
          id: "urn",
          parcels: 2,
          ways: [plainWay("paper", "paper", 4, 900), plainWay("bubble", "bubble", 2, 600)],
        },
      ],
    });
    expect(boardStanding(mixBoard(question), []).split).toEqual([
      { typeId: "urn", style: "bubble", parcels: 2 },
      { typeId: "cup", style: "paper", parcels: 2 },
    ]);
  });

  it("counts what is over the limits as shares of them", () => {
    const question = plainMix({
      supplies: [plainMixSupply("paper", { litresPerUnit: 1 })],
      suppliers: [plainMixSupplier("north", { leastOrderMinor: 400 })],
      offers: [plainMixOffer("paper", { unitsPerPack: 10 })],
      types: [],
      limits: { cashMinor: 200, litres: 25 },
    });
    const over = (packs: number) => boardStanding(mixBoard(question), [packs]).over;
    expect(over(0)).toBe(0);
    // 200 of goods are half of the least order short, by what there is; 300 are 100 over 200, and 5 litres over 25.
    expect(over(2)).toBeCloseTo(200 / 200, 9);
    expect(over(3)).toBeCloseTo(100 / 300 + 100 / 200 + 5 / 25, 9);
  });
});
