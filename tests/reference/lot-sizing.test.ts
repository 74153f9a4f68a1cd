import { readFileSync } from "node:fs";
import { afterAll, describe, expect, it } from "vitest";
import type { PlanOffer } from "#lib/purchasing/plan/plan-offer";
import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";
import { type PurchasePlan, purchasePlan } from "#lib/purchasing/plan/purchase-plan";
import { endSolver, solveInWorker } from "../../app/solver/solve-in-worker";
import { plainOffer, plainQuestion, plainSupplier, plainSupply } from "../lib/purchasing/plan/small-question";

// Published and recalled lot-sizing examples, each with its source in data/purchase-plan-cases.json, put to the
// purchase plan as one supply in packs of one unit. A charge or a price that changes by the week becomes one
// supplier for each week. The examples forbid shortage: here it costs so much that the cheapest plan has none.
type Input = {
  demand: number[];
  K: number | number[];
  h: number;
  unitCost?: number | number[];
  startStock?: number;
  capacity?: number;
  backorderCost?: number;
};
type Expected = { cost: number; orders?: number[] };
type Case = { id: string; input: Input; expected: Expected & { wagnerWhitin?: number | Expected } };
const { cases }: { cases: Case[] } = JSON.parse(
  readFileSync(new URL("./data/purchase-plan-cases.json", import.meta.url), "utf8"),
);
const lots = cases.filter(({ id }) => /^(ww|cls|bls|sm)-/.test(id));

/** Minor units for one unit of money in the examples, so that 0.1 and 0.8 are whole too. */
const MINOR = 100;
const FORBIDDEN = 1e5;

function question({ demand, K, h, unitCost, startStock, capacity, backorderCost }: Input): PlanQuestion {
  const weeks = demand.length;
  const byWeek = (value: number | number[] | undefined, week: number): number =>
    (Array.isArray(value) ? (value[week] ?? Number.NaN) : (value ?? 0)) * MINOR;
  const changes = {
    stock: startStock ?? 0,
    holdingMinor: h * MINOR,
    shortMinor: (backorderCost ?? FORBIDDEN) * MINOR,
    litres: 0,
  };
  const isFixed = !Array.isArray(K) && !Array.isArray(unitCost);
  const suppliers = (isFixed ? [0] : demand.map((_, week) => week)).map((week) =>
    plainSupplier(`from week ${week}`, weeks, {
      deliveryMinor: byWeek(K, week),
      orderWeeks: demand.map((_, each) => isFixed || each === week),
    }),
  );
  const offers = suppliers.map(
    ({ id }, week): PlanOffer =>
      plainOffer("supply", id, {
        steps: [{ fromPacks: 1, priceMinor: byWeek(unitCost, week) }],
        mostPacks: capacity ?? null,
      }),
  );
  return plainQuestion({ supplies: [plainSupply("supply", demand, changes)], suppliers, offers });
}

async function planned(of: PlanQuestion): Promise<PurchasePlan> {
  const now = () => performance.now() / 1000;
  const answer = await purchasePlan(of, { solve: solveInWorker, seconds: 60, gap: 0, now });
  if (answer.kind !== "plan") throw new RangeError("the example has a plan");
  return answer.plan;
}

const packsByWeek = (plan: PurchasePlan, weeks: number): number[] =>
  Array.from({ length: weeks }, (_, week) =>
    plan.orders
      .filter((order) => order.week === week)
      .flatMap(({ lines }) => lines)
      .reduce((sum, { packs }) => sum + packs, 0),
  );

afterAll(endSolver);

describe("lot sizing by the purchase plan", () => {
  it("has the twelve examples of the file", () => {
    expect(lots.map(({ id }) => id)).toHaveLength(12);
  });

  it.each(lots)(
    "$id: costs what the source says, proven and without shortage",
    async ({ input, expected }) => {
      const best = expected.wagnerWhitin ?? expected;
      const cost = typeof best === "number" ? best : best.cost;
      const plan = await planned(question(input));
      expect(plan.costs.totalMinor / MINOR).toBeCloseTo(cost, 6);
      expect(plan.proof.proven).toBe(true);
      if (input.backorderCost === undefined) expect(plan.shortages).toEqual([]);
    },
  );

  it("ww-008: orders as the source does, whose plan is the only best one", async () => {
    const example = lots.find(({ id }) => id === "ww-008");
    if (example === undefined) throw new RangeError("ww-008 is in the file");
    const plan = await planned(question(example.input));
    expect(packsByWeek(plan, example.input.demand.length)).toEqual(example.expected.orders);
  });

  it("ww-009 and sm-001: no plan of the simpler rules in the source is cheaper", async () => {
    for (const { input, expected } of lots.filter(({ id }) => id === "ww-009" || id === "sm-001")) {
      const plan = await planned(question(input));
      const others = Object.values(expected).map((each) =>
        typeof each === "number" ? each : (each as Expected).cost,
      );
      expect(others.length).toBeGreaterThan(1);
      expect(plan.costs.totalMinor / MINOR).toBeLessThanOrEqual(Math.min(...others) + 1e-6);
    }
  });
});
