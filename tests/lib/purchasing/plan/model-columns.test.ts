import { describe, expect, it } from "vitest";
import {
  hasTierColumn,
  relaxationColumn,
  slotsByOrder,
  stockColumn,
} from "#lib/purchasing/plan/model-columns";
import { planModel, planParts } from "#lib/purchasing/plan/plan-model";
import { plainOffer, plainQuestion, plainSupplier, plainSupply, smallQuestion } from "./small-question";

describe("columns of the model", () => {
  it("have names of their own: hand, owed, missing, peak and lends differ", () => {
    const kinds = ["hand", "owed", "missing", "peak", "lends"] as const;
    expect(new Set(kinds.map((kind) => stockColumn(kind, 1, 2))).size).toBe(5);
    const { columns } = planModel(smallQuestion(3)).model;
    expect(new Set(columns.map(({ name }) => name)).size).toBe(columns.length);
  });

  it("need no yes or no for a first tier from one pack on", () => {
    const tiers = [
      { fromPacks: 1, priceMinor: 9 },
      { fromPacks: 3, priceMinor: 8 },
    ];
    const question = plainQuestion({
      supplies: [plainSupply("paper", [5, 5])],
      suppliers: [plainSupplier("north", 2), plainSupplier("south", 2)],
      offers: [
        plainOffer("paper", "north", { steps: tiers }),
        plainOffer("paper", "south", { steps: tiers.slice(1) }),
      ],
    });
    const { slots } = planParts(question);
    expect(slots.map((slot) => slot.tiers.map((_, tier) => hasTierColumn(slot, tier)))).toEqual([
      [false, true],
      [false, true],
      [true],
      [true],
    ]);
    expect(slotsByOrder(slots).map((order) => order.map(({ number }) => number))).toEqual([
      [0],
      [1],
      [2],
      [3],
    ]);
  });

  it("count what a limit gives as a share of the limit", () => {
    expect(relaxationColumn("cash", 0, 400)).toMatchObject({ name: "w_cash0", cost: 1 / 400, lower: 0 });
    expect(relaxationColumn("room", 0, 0).cost).toBe(1);
  });
});
