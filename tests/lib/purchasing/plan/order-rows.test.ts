import { describe, expect, it } from "vitest";
import { planModel } from "#lib/purchasing/plan/plan-model";
import { plainOffer, plainQuestion, plainSupplier, plainSupply } from "./small-question";
import { brokenByPlan } from "./whole-model";

const steps = [
  { fromPacks: 2, priceMinor: 100 },
  { fromPacks: 4, priceMinor: 80 },
];
const question = (supplier: object) =>
  plainQuestion({
    supplies: [plainSupply("paper", [9], { holdingMinor: 0, shortMinor: 0 })],
    suppliers: [plainSupplier("north", 1, supplier)],
    offers: [plainOffer("paper", "north", { steps, kind: "incremental" })],
  });
const cost = (packs: number, supplier: object) =>
  brokenByPlan(planModel(question(supplier)), {
    lines: [{ offerId: "paper of north", week: 0, packs }],
    standIns: [],
  });

describe("rows of the orders", () => {
  it("price packs by their tiers, with delivery below the threshold and handling always", () => {
    const terms = { deliveryMinor: 50, freeFromMinor: 400, handlingMinor: 7 };
    // 3 at 100 and one at 80 is 380; with a second at 80 the threshold is passed.
    expect(cost(4, terms)).toEqual({ broken: [], cost: 380 + 50 + 7 });
    expect(cost(5, terms)).toEqual({ broken: [], cost: 460 + 7 });
  });

  it("are broken by an order below the least", () => {
    expect(cost(3, { leastOrderMinor: 310 }).broken).toEqual(["least"]);
    expect(cost(4, { leastOrderMinor: 310 }).broken).toEqual([]);
  });
});
