import { describe, expect, it } from "vitest";
import { checkedMix } from "#lib/cushioning/purchase/checked-mix";
import type { MixQuestion } from "#lib/cushioning/purchase/mix-question";
import { plainMix, plainMixOffer, plainMixSupplier, plainMixSupply, plainWay } from "./small-mix";

const good = plainMix({
  supplies: [plainMixSupply("paper", { leftMinor: 8 })],
  offers: [
    plainMixOffer("paper", {
      unitsPerPack: 10,
      steps: [
        { fromPacks: 1, priceMinor: 100 },
        { fromPacks: 5, priceMinor: 90 },
      ],
    }),
  ],
  types: [{ id: "cup", parcels: 4, ways: [plainWay("paper", "paper", 4, 500)] }],
});
const [supply] = good.supplies;
const [offer] = good.offers;
const [type] = good.types;
if (supply === undefined || offer === undefined || type === undefined) throw new RangeError("one of each");

describe("a checked question", () => {
  it("is left as it is when it makes sense", () => {
    expect(checkedMix(good)).toEqual({ question: good, leftOut: [], capped: [] });
  });

  it("goes without offers that cannot be bought, and names them", () => {
    const offers = [
      offer,
      plainMixOffer("paper", { id: "free", steps: null }),
      plainMixOffer("paper", { id: "far", supplierId: "south" }),
      plainMixOffer("felt", { id: "felt" }),
    ];
    const { question, leftOut } = checkedMix({ ...good, offers });
    expect(question.offers).toEqual([offer]);
    expect(leftOut).toEqual([
      { offerId: "free", why: "no-price" },
      { offerId: "far", why: "no-supplier" },
      { offerId: "felt", why: "no-supply" },
    ]);
  });

  it("caps what is left over at the cheapest step that can be reached, and says so", () => {
    const dear = [{ ...supply, leftMinor: 12 }];
    const { question, capped } = checkedMix({ ...good, supplies: dear });
    expect(capped).toEqual([
      { supplyId: "paper", fromMinor: 12, toMinor: expect.closeTo(9, 9), offerId: "paper of north" },
    ]);
    // A pack never costs less than its units are worth.
    expect((question.supplies[0]?.leftMinor ?? 99) * 10).toBeLessThanOrEqual(90);
    const few = checkedMix({ ...good, supplies: dear, offers: [{ ...offer, mostPacks: 4 }] });
    expect(few.capped[0]?.toMinor).toBeCloseTo(10, 9);
    expect(checkedMix({ ...good, supplies: dear, offers: [{ ...offer, mostPacks: 0 }] }).capped).toEqual([]);
  });

  const wrong: readonly (readonly [string, Partial<MixQuestion>, string])[] = [
    ["stock below nothing", { supplies: [{ ...supply, onHand: -1 }] }, "on hand of supply paper, got -1"],
    ["what is kept", { supplies: [{ ...supply, keep: Number.NaN }] }, "kept of supply paper"],
    ["two supplies of one id", { supplies: [supply, supply] }, "paper twice"],
    ["broken money", { suppliers: [plainMixSupplier("north", { deliveryMinor: 1.5 })] }, "at supplier north"],
    ["an empty pack", { offers: [{ ...offer, unitsPerPack: 0 }] }, "pack above 0 of offer paper of north"],
    ["falling steps", { offers: [{ ...offer, steps: (offer.steps ?? []).toReversed() }] }, "price steps"],
    ["half packs", { offers: [{ ...offer, mostPacks: 1.5 }] }, "whole most packs"],
    ["a type without a way", { types: [{ ...type, ways: [] }] }, "at least one way to pack type cup"],
    ["a style twice", { types: [{ ...type, ways: [...type.ways, ...type.ways] }] }, "cup in paper twice"],
    [
      "an unknown supply",
      { types: [{ ...type, ways: [plainWay("paper", "felt", 1, 1)] }] },
      "cup in paper, got felt",
    ],
    [
      "postage below nothing",
      { types: [{ ...type, ways: [plainWay("paper", "paper", 1, -1)] }] },
      "costs of at least 0",
    ],
    [
      "parcels without end",
      { types: [{ ...type, parcels: Number.POSITIVE_INFINITY }] },
      "parcels of type cup",
    ],
    ["cash below nothing", { limits: { cashMinor: -1, litres: null } }, "cash of at least 0"],
    ["room below nothing", { limits: { cashMinor: null, litres: -1 } }, "room of at least 0"],
  ];
  it.each(wrong)("refuses %s and names where", (_, parts, words) => {
    expect(() => checkedMix({ ...good, ...parts })).toThrow(words);
  });
});
