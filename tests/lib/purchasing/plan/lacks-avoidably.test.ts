import { describe, expect, it } from "vitest";
import { costedPlan } from "#lib/purchasing/plan/costed-plan";
import { lacksAvoidably } from "#lib/purchasing/plan/lacks-avoidably";
import { planParts } from "#lib/purchasing/plan/plan-model";
import { plainOffer, plainQuestion, plainSupplier, plainSupply } from "./small-question";

/** 2 a week, one wanted at the end; the first order arrives in the second week. */
const question = plainQuestion({
  supplies: [plainSupply("paper", [2, 2], { stock: 1, wanted: [0, 1] })],
  suppliers: [plainSupplier("north", 2)],
  offers: [plainOffer("paper", "north", { leadWeeks: 1 })],
});

const lacks = (packs: number, keepsWanted: boolean) => {
  const asked = { ...question, keepsWanted };
  const choice = { lines: [{ offerId: "paper of north", week: 0, packs }], standIns: [] };
  return lacksAvoidably(asked, costedPlan(asked, choice), planParts(asked).supplies);
};

describe("what a plan lacks avoidably", () => {
  it("is owed when an order could have come, not before", () => {
    // One is owed in the first week whatever is ordered; in the second 3 packs meet the need, 2 leave one owed.
    expect([lacks(2, false), lacks(3, false)]).toEqual([true, false]);
  });

  it("is the wanted stock too where that must be kept", () => {
    expect([lacks(3, true), lacks(4, true)]).toEqual([true, false]);
  });
});
