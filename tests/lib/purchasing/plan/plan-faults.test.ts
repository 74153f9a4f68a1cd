import { describe, expect, it } from "vitest";
import { type CostedPlan, costedPlan } from "#lib/purchasing/plan/costed-plan";
import { planFaults } from "#lib/purchasing/plan/plan-faults";
import { plainOffer, plainQuestion, plainSupplier, plainSupply } from "./small-question";

const question = plainQuestion({
  supplies: [
    plainSupply("paper", [5, 5, 5], { most: [9, 9, 9] }),
    plainSupply("saved", [1, 1, 1], { stock: 4 }),
  ],
  suppliers: [
    plainSupplier("north", 3, { deliveryMinor: 70, leastOrderMinor: 200, orderWeeks: [true, false, true] }),
  ],
  offers: [plainOffer("paper", "north", { mostPacks: 8 })],
  substitutes: [{ fromSupplyId: "saved", toSupplyId: "paper", ratio: 1 }],
  limits: { cash: [{ throughWeek: 1, minor: 770 }], litres: 12 },
});
const faults = (
  packs: number,
  week: number,
  units = 0,
  changed: (plan: CostedPlan) => CostedPlan = (plan) => plan,
) => {
  const standIns = [{ fromSupplyId: "saved", toSupplyId: "paper", week: 0, units }];
  const plan = costedPlan(question, { lines: [{ offerId: "paper of north", week, packs }], standIns });
  return planFaults(question, changed(plan)).map(({ kind }) => kind);
};

describe("faults of a plan", () => {
  it("are none in a sound one", () => {
    expect(faults(5, 0, 2)).toEqual([]);
  });

  it.each([
    [
      "too many packs and too much stock",
      9.5,
      0,
      0,
      ["packs", "goods", "goods", "cash", "most-stock", "room"],
    ],
    ["an order in a week without a chance", 5, 1, 0, ["week"]],
    ["an order below the least", 1, 0, 0, ["least-order"]],
    ["more standing in than is used or there", 3, 0, 6, ["stand-in", "lent-too-much"]],
  ] as const)("name %s", (_, packs, week, units, kinds) => {
    expect(new Set(faults(packs, week, units))).toEqual(new Set(kinds));
  });

  it("name cash and room by how far they are exceeded", () => {
    const tight = { ...question, limits: { cash: [{ throughWeek: 0, minor: 500 }], litres: 8 } };
    const plan = costedPlan(tight, {
      lines: [{ offerId: "paper of north", week: 0, packs: 5 }],
      standIns: [],
    });
    expect(planFaults(tight, plan)).toEqual([
      { kind: "cash", at: "through week 0", by: 70 },
      { kind: "room", at: "week 0", by: 1 },
    ]);
  });

  it("name figures that do not follow from the packs", () => {
    const cheaper = (plan: CostedPlan) => ({ ...plan, costs: { ...plan.costs, totalMinor: 0 } });
    const freer = (plan: CostedPlan) => ({
      ...plan,
      orders: plan.orders.map((each) => ({ ...each, deliveryMinor: 0 })),
    });
    const fuller = (plan: CostedPlan) => ({
      ...plan,
      stock: plan.stock.map((each) => ({ ...each, after: [99, 99, 99] })),
    });
    expect(faults(5, 0, 0, cheaper)).toEqual(["costs"]);
    expect(faults(5, 0, 0, freer)).toEqual(["delivery", "costs"]);
    expect(faults(5, 0, 0, fuller)).toContain("stock");
  });

  it("name what could wait when only the urgent is asked for", () => {
    const urgent = { ...question, aim: { kind: "urgent" } } as const;
    const of = (packs: number) => {
      const plan = costedPlan(urgent, {
        lines: [{ offerId: "paper of north", week: 0, packs }],
        standIns: [],
      });
      return planFaults(urgent, plan).filter(({ kind }) => kind === "not-urgent");
    };
    // The next order is that of week 2, so the use of two weeks, ten packs, cannot wait.
    expect(of(10)).toEqual([]);
    expect(of(11)).toEqual([{ kind: "not-urgent", at: "paper of north", by: 1 }]);
  });
});
