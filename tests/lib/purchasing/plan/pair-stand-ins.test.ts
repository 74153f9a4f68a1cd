import { describe, expect, it } from "vitest";
import { costedPlan } from "#lib/purchasing/plan/costed-plan";
import { pairSpace } from "#lib/purchasing/plan/pair-space";
import { pairStandIns } from "#lib/purchasing/plan/pair-stand-ins";
import { planParts } from "#lib/purchasing/plan/plan-model";
import { plainOffer, plainQuestion, plainSupplier, plainSupply } from "./small-question";

const question = plainQuestion({
  supplies: [
    plainSupply("saved", [0, 1, 0], { stock: 4, holdingMinor: 0 }),
    plainSupply("paper", [2, 2, 2], { holdingMinor: 0 }),
  ],
  suppliers: [plainSupplier("north", 3)],
  offers: [plainOffer("paper", "north", { unitsPerPack: 2 })],
  substitutes: [{ fromSupplyId: "saved", toSupplyId: "paper", ratio: 1 }],
});
const { supplies, slots } = planParts(question);
const [from, to] = supplies;
if (from === undefined || to === undefined) throw new RangeError("two supplies");
const space = pairSpace(from, to, 1, 3, 16);

describe("stand-ins of a pair whose orders are known", () => {
  it("do what the orders leave open, and leave the supply its own need", () => {
    // Four saved, one needed by themselves; a pack of paper for the last week: three of the first four uses.
    const last = slots.find(({ week }) => week === 2);
    const packs = new Map([[last?.number ?? -1, 1]]);
    const standIns = pairStandIns(space, packs);
    expect(standIns.reduce((sum, { units }) => sum + units, 0)).toBeCloseTo(3, 1);
    const lines = [{ offerId: "paper of north", week: 2, packs: 1 }];
    const { end } = costedPlan(question, { lines, standIns }).stock[0] ?? { end: [] };
    expect(Math.min(...end)).toBeGreaterThanOrEqual(-1e-9);
  });

  it("are none where orders meet every need", () => {
    const first = slots.find(({ week }) => week === 0);
    expect(pairStandIns(space, new Map([[first?.number ?? -1, 3]]))).toEqual([]);
  });
});
