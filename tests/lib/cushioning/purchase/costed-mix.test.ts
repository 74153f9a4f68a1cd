import { describe, expect, it } from "vitest";
import { costedMix } from "#lib/cushioning/purchase/costed-mix";
import { plainMix, plainMixOffer, plainMixSupplier, plainMixSupply } from "./small-mix";

const question = plainMix({
  supplies: [
    plainMixSupply("paper", { onHand: 20, keep: 10, leftMinor: 5, litresPerUnit: 0.1 }),
    plainMixSupply("bubble", { keep: 8, leftMinor: 20, litresPerUnit: 1 }),
  ],
  suppliers: [plainMixSupplier("north", { deliveryMinor: 300, freeFromMinor: 2000 })],
  offers: [
    plainMixOffer("bubble", {
      unitsPerPack: 10,
      steps: [
        { fromPacks: 1, priceMinor: 500 },
        { fromPacks: 3, priceMinor: 450 },
      ],
      kind: "incremental",
    }),
  ],
  types: [
    {
      id: "cup",
      parcels: 6,
      ways: [
        { style: "paper", takes: [{ supplyId: "paper", units: 4 }], sendMinor: 700.5, otherMinor: 90 },
        {
          style: "bubble",
          takes: [
            { supplyId: "bubble", units: 3 },
            { supplyId: "paper", units: 1 },
          ],
          sendMinor: 600,
          otherMinor: 60,
        },
      ],
    },
  ],
});

describe("a costed mix", () => {
  it("adds up goods, delivery, postage, other costs and what is left, by hand", () => {
    // 3 packs: 500 + 500 + 450 = 1450, delivery 300. 2 on paper, 4 on bubble.
    // postage 2 * 700.5 + 4 * 600 = 3801; other 2 * 90 + 4 * 60 = 420.
    // paper 20 - 8 - 4 = 8 left, bubble 30 - 12 = 18 left: 8 * 5 + 18 * 20 = 400.
    const mix = costedMix(question, {
      lines: [{ offerId: "bubble of north", packs: 3 }],
      split: [
        { typeId: "cup", style: "bubble", parcels: 4 },
        { typeId: "cup", style: "paper", parcels: 2 },
      ],
    });
    expect(mix.costs).toEqual({
      goodsMinor: 1450,
      deliveryMinor: 300,
      postageMinor: 3801,
      otherMinor: 420,
      grossMinor: 5971,
      leftMinor: 400,
      totalMinor: 5571,
    });
    expect(mix.stock.map(({ bought, used, left }) => [bought, used, left])).toEqual([
      [0, 12, 8],
      [30, 12, 18],
    ]);
    expect(mix.shortfalls).toEqual([{ supplyId: "paper", units: 2 }]);
    expect(mix.lack).toEqual({ parcels: 0, share: 0.2 });
    expect(mix.split.map(({ style }) => style)).toEqual(["paper", "bubble"]);
    expect(mix.litres).toBe(32);
  });

  it("names what is not packed, and charges nothing for it", () => {
    const mix = costedMix(question, { lines: [], split: [{ typeId: "cup", style: "paper", parcels: 2.5 }] });
    expect(mix.unpacked).toEqual([{ typeId: "cup", parcels: 3.5 }]);
    expect(mix.lack).toEqual({ parcels: 3.5, share: 1 });
    expect(mix.costs.grossMinor).toBe(2.5 * 790.5);
    expect(mix.orders).toEqual([]);
  });

  it("refuses a style and an offer that the question does not have", () => {
    const split = [{ typeId: "cup", style: "mixed", parcels: 1 } as const];
    expect(() => costedMix(question, { lines: [], split })).toThrow("type cup in style mixed");
    expect(() => costedMix(question, { lines: [{ offerId: "tape", packs: 1 }], split: [] })).toThrow(
      "offer tape",
    );
  });
});
