import { readFileSync } from "node:fs";
import { afterAll, describe, expect, it } from "vitest";
import { planFaults } from "#lib/purchasing/plan/plan-faults";
import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";
import { type PurchasePlan, purchasePlan } from "#lib/purchasing/plan/purchase-plan";
import { endSolver, solveInWorker } from "../../app/solver/solve-in-worker";
import { everyPlan } from "../lib/purchasing/plan/every-plan";
import { plainOffer, plainQuestion, plainSupplier, plainSupply } from "../lib/purchasing/plan/small-question";

// po-001, po-002, mp-001, mp-002 of data/purchase-plan-cases.json: computed from their stated rules with HiGHS,
// po-001 confirmed by full enumeration there; no outside source.
type OneShot = {
  items: Record<string, number>;
  offers: {
    item: string;
    supplier: string;
    pack: number;
    tiers: { minPacks: number; pricePerPack: number }[];
  }[];
  fixedShipping: Record<string, number>;
  minOrderValue: Record<string, number>;
};
type ManyWeeks = {
  items: {
    pack: number;
    pricePerPack: number;
    supplier: number;
    demand: number[];
    holdingPerUnitWeek: number;
  }[];
  weeks: number;
  fixedShipping: number[];
};
type Case = { id: string; input: unknown; expected: { cost: number } };
const { cases }: { cases: Case[] } = JSON.parse(
  readFileSync(new URL("./data/purchase-plan-cases.json", import.meta.url), "utf8"),
);

const minor = (money: number): number => Math.round(money * 100);
const FORBIDDEN = 1e5;

function given(id: string): Case {
  const found = cases.find((each) => each.id === id);
  if (found === undefined) throw new RangeError(`given requires a case of the file, got ${id}`);
  return found;
}

function oneShot(input: OneShot): PlanQuestion {
  return plainQuestion({
    supplies: Object.entries(input.items).map(([id, need]) =>
      plainSupply(id, [need], { holdingMinor: 0, shortMinor: FORBIDDEN }),
    ),
    suppliers: Object.entries(input.fixedShipping).map(([id, shipping]) =>
      plainSupplier(id, 1, {
        deliveryMinor: minor(shipping),
        leastOrderMinor: minor(input.minOrderValue[id] ?? Number.NaN),
      }),
    ),
    offers: input.offers.map(({ item, supplier, pack, tiers }) =>
      plainOffer(item, supplier, {
        unitsPerPack: pack,
        steps: tiers.map(({ minPacks, pricePerPack }) => ({
          fromPacks: minPacks,
          priceMinor: minor(pricePerPack),
        })),
      }),
    ),
  });
}

function manyWeeks(input: ManyWeeks): PlanQuestion {
  return plainQuestion({
    supplies: input.items.map(({ demand, holdingPerUnitWeek }, index) =>
      plainSupply(`item ${index}`, demand, { holdingMinor: holdingPerUnitWeek * 100, shortMinor: FORBIDDEN }),
    ),
    suppliers: input.fixedShipping.map((shipping, index) =>
      plainSupplier(`supplier ${index}`, input.weeks, { deliveryMinor: minor(shipping) }),
    ),
    offers: input.items.map(({ pack, pricePerPack, supplier }, index) =>
      plainOffer(`item ${index}`, `supplier ${supplier}`, {
        unitsPerPack: pack,
        steps: [{ fromPacks: 1, priceMinor: minor(pricePerPack) }],
      }),
    ),
  });
}

async function planned(question: PlanQuestion): Promise<PurchasePlan> {
  const now = () => performance.now() / 1000;
  const answer = await purchasePlan(question, { solve: solveInWorker, seconds: 60, gap: 0, now });
  if (answer.kind !== "plan") throw new RangeError("the case has a plan");
  expect(planFaults(question, answer.plan)).toEqual([]);
  expect(answer.plan.proof.proven).toBe(true);
  expect(answer.plan.shortages).toEqual([]);
  return answer.plan;
}

afterAll(endSolver);

describe("one order from several suppliers", () => {
  it.each(["po-001", "po-002"])("%s: the least cost with steps, least orders and shipping", async (id) => {
    const { input, expected } = given(id);
    const plan = await planned(oneShot(input as OneShot));
    expect(plan.costs.totalMinor).toBe(minor(expected.cost));
    expect(plan.costs.goodsMinor + plan.costs.deliveryMinor).toBe(minor(expected.cost));
  });
});

describe("orders of several weeks", () => {
  it.each(["mp-001", "mp-002"])("%s: the least cost with shared shipping and holding", async (id) => {
    const { input, expected } = given(id);
    const plan = await planned(manyWeeks(input as ManyWeeks));
    expect(Math.abs(plan.costs.totalMinor / 100 - expected.cost)).toBeLessThan(1e-5 * expected.cost);
  });

  // The shared cases above order everything in their first week. In these, holding is dear or delivery cheap;
  // the least cost is found by trying every plan (tests/lib/purchasing/plan/every-plan.ts).
  const later: readonly { name: string; deliveryMinor: number; holdingMinor: number; weeks: number[] }[] = [
    { name: "dear holding", deliveryMinor: 150, holdingMinor: 60, weeks: [0, 1, 2] },
    { name: "cheap delivery", deliveryMinor: 10, holdingMinor: 8, weeks: [0, 1, 2] },
    { name: "both as usual", deliveryMinor: 120, holdingMinor: 22, weeks: [0, 2] },
  ];
  it.each(later)("$name: orders in weeks $weeks, as the best of all plans costs", async (terms) => {
    const { deliveryMinor, holdingMinor, weeks } = terms;
    const question = plainQuestion({
      supplies: [
        plainSupply("paper", [2, 3, 3], { holdingMinor, shortMinor: 5000 }),
        plainSupply("tape", [1, 1, 2], { holdingMinor, shortMinor: 5000 }),
      ],
      suppliers: [plainSupplier("north", 3, { deliveryMinor })],
      offers: [
        plainOffer("paper", "north", { unitsPerPack: 1, mostPacks: 8 }),
        plainOffer("tape", "north", { unitsPerPack: 1, mostPacks: 4 }),
      ],
    });
    const plan = await planned(question);
    expect(plan.costs.totalMinor).toBeCloseTo(everyPlan(question)?.cost ?? Number.NaN, 6);
    expect(plan.orders.map(({ week }) => week)).toEqual(weeks);
  });
});
