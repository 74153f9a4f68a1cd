import { describe, expect, it } from "vitest";
import { limitWords, notPlannedWords, planSum, proofWords } from "#app/purchase-plan/plan-words.ts";
import type { PurchasePlan } from "#lib/purchasing/plan/purchase-plan";
import { day } from "#lib/units/day";

const frame = {
  today: day("2026-11-25"),
  inMoney: (minor: number) => `$${(minor / 100).toFixed(2)}`,
  nameOf: (id: string) => (id === "marram" ? "Marram Supply" : "Carton tape"),
};
const order = (week: number, goodsMinor: number) => ({
  supplierId: "marram",
  week,
  lines: [],
  goodsMinor,
  deliveryMinor: 895,
});
const plan = (changes: Partial<PurchasePlan>): PurchasePlan => ({
  orders: [],
  standIns: [],
  stock: [],
  shortages: [],
  costs: {
    goodsMinor: 0,
    deliveryMinor: 0,
    handlingMinor: 0,
    holdingMinor: 0,
    shortMinor: 0,
    endValueMinor: 0,
    totalMinor: 0,
  },
  proof: { boundMinor: 100, gap: 0, proven: true, seconds: 1 },
  from: "solver",
  why: null,
  reasons: [],
  peakLitres: 0,
  ...changes,
});

describe("the plan in words", () => {
  it("says what this week's orders come to and when the next is due", () => {
    expect(planSum(plan({ orders: [order(0, 3800), order(0, 1000), order(3, 500)] }), frame)).toBe(
      "2 orders for $65.90 with delivery; as use is expected, the next in the week from 16 Dec.",
    );
    expect(planSum(plan({ orders: [order(0, 3800)] }), frame)).toBe(
      "One order for $46.95 with delivery; none after that for 13 weeks.",
    );
    expect(planSum(plan({ orders: [order(2, 3800)] }), frame)).toBe(
      "Nothing needs to be ordered this week; as use is expected, the next in the week from 9 Dec.",
    );
  });

  it("says how good it is known to be, rounded to its disadvantage", () => {
    expect(proofWords(plan({}))).toBe(
      "Worked out for all suppliers and 13 weeks together: no plan is cheaper.",
    );
    const near = { boundMinor: 100, gap: 0.0041, proven: true, seconds: 2 };
    expect(proofWords(plan({ from: "heuristic", why: { kind: "spared" }, proof: near }))).toBe(
      "Worked out for all suppliers and 13 weeks together; no plan is more than 0.5 % cheaper.",
    );
    const stopped = { boundMinor: 99, gap: 0.0061, proven: false, seconds: 6 };
    expect(proofWords(plan({ proof: stopped }))).toBe(
      "Worked out for all suppliers and 13 weeks together, stopped after its time; no plan is more than 0.7 % cheaper.",
    );
    expect(
      proofWords(
        plan({
          from: "heuristic",
          why: { kind: "failed", message: "out of memory" },
          proof: { ...stopped, boundMinor: null, gap: null },
        }),
      ),
    ).toBe(
      "By rule of thumb: the solver failed (out of memory); how much cheaper a plan could be is not known.",
    );
  });

  it("names the limits that stand in the way, and the least that would help", () => {
    expect(
      limitWords(
        [
          { kind: "cash", throughWeek: 0, limitMinor: 2000, byMinor: 1801 },
          { kind: "room", limitLitres: 100, byLitres: 12.2 },
          { kind: "least-order", supplierId: "marram", limitMinor: 5000, byMinor: 700 },
          { kind: "most-stock", supplyId: "tape", limitUnits: 300, byUnits: 41.5 },
        ],
        frame,
      ),
    ).toEqual([
      "$20.00 to spend until 1 Dec is too little: $18.01 more would do.",
      "100 l of room is too little: 13 l more would do.",
      "Marram Supply takes no order under $50.00: $7.00 less would do.",
      "Carton tape: a pack lasts longer than you want to keep; 42 more on the shelf would do.",
    ]);
  });

  it("says what it leaves out, but not what is not used", () => {
    expect(
      notPlannedWords(
        [
          { supplyId: "tape", why: "not-counted" },
          { supplyId: "x", why: "no-use" },
          { supplyId: "tape", why: "no-price" },
        ],
        frame.nameOf,
      ),
    ).toEqual([
      "Carton tape: not in the plan until counted.",
      "Carton tape: not in the plan, as no price is known.",
    ]);
  });
});
