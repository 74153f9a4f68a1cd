import { describe, expect, it } from "vitest";
import { checkedQuestion } from "#lib/purchasing/plan/checked-question";
import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";
import { plainOffer, plainQuestion, plainSupplier, plainSupply } from "./small-question";

const supply = plainSupply("paper", [1, 1]);
const supplier = plainSupplier("north", 2);
const offer = plainOffer("paper", "north");
const question = plainQuestion({ supplies: [supply], suppliers: [supplier], offers: [offer] });
const limits = { cash: [], litres: null };

describe("a question", () => {
  it("goes without offers that cannot be bought, and says which", () => {
    const offers = [
      offer,
      { ...offer, id: "a", steps: null },
      { ...offer, id: "b", supplierId: "west" },
      { ...offer, id: "c", supplyId: "foam" },
    ];
    const checked = checkedQuestion({ ...question, offers });
    expect(checked.question.offers).toEqual([offer]);
    expect(checked.leftOut).toEqual([
      { offerId: "a", why: "no-price" },
      { offerId: "b", why: "no-supplier" },
      { offerId: "c", why: "no-supply" },
    ]);
  });

  it("may have a later step that is dearer", () => {
    const steps = [
      { fromPacks: 1, priceMinor: 10 },
      { fromPacks: 5, priceMinor: 12 },
    ];
    expect(checkedQuestion({ ...question, offers: [{ ...offer, steps }] }).leftOut).toEqual([]);
  });

  it.each([
    ["no week", { weeks: 0 }, /at least one week, got 0/],
    ["an id twice", { supplies: [supply, supply] }, /ids that differ, got paper twice/],
    [
      "a stock that is not known",
      { supplies: [{ ...supply, stock: Number.NaN }] },
      /stock of supply paper, got NaN/,
    ],
    ["a week short", { supplies: [{ ...supply, use: [1] }] }, /week in use of supply paper, got 1/],
    [
      "use below nothing",
      { supplies: [{ ...supply, use: [1, -1] }] },
      /use of at least 0 of supply paper, got -1/,
    ],
    [
      "an endless wish",
      { supplies: [{ ...supply, wanted: [Infinity, 0] }] },
      /wanted .* paper, got Infinity/,
    ],
    [
      "half a cent",
      { suppliers: [{ ...supplier, deliveryMinor: 0.5 }] },
      /whole amounts of money at supplier north/,
    ],
    [
      "an empty pack",
      { offers: [{ ...offer, unitsPerPack: 0 }] },
      /pack above 0 of offer paper of north, got 0/,
    ],
    [
      "falling steps",
      {
        offers: [
          {
            ...offer,
            steps: [
              { fromPacks: 4, priceMinor: 9 },
              { fromPacks: 2, priceMinor: 8 },
            ],
          },
        ],
      },
      /ever more packs of offer paper of north, got 4,2/,
    ],
    ["no step", { offers: [{ ...offer, steps: [] }] }, /ever more packs of offer paper of north/],
    [
      "cash through no week",
      { limits: { ...limits, cash: [{ throughWeek: 2, minor: 5 }] } },
      /through a week of the plan/,
    ],
    ["room below nothing", { limits: { ...limits, litres: -1 } }, /room of at least 0 litres, got -1/],
    [
      "a sum below nothing",
      { aim: { kind: "within", minor: -1 } },
      /sum of at least 0 for this week, got -1/,
    ],
    [
      "a stand-in for itself",
      { substitutes: [{ fromSupplyId: "paper", toSupplyId: "paper", ratio: 1 }] },
      /two different supplies in the stand-in of paper for paper/,
    ],
  ] satisfies [string, Partial<PlanQuestion>, RegExp][])("is refused with %s", (_, changes, message) => {
    expect(() => checkedQuestion({ ...question, ...changes })).toThrow(message);
  });
});
