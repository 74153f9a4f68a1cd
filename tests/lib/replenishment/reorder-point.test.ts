import { describe, expect, it } from "vitest";
import { sumGrid } from "#lib/forecast/sum-grid";
import { reorderPoint } from "#lib/replenishment/reorder-point";
import type { ServiceGoal } from "#lib/replenishment/service-goal";
import { undershoot } from "#lib/replenishment/undershoot";
import { gridOf } from "#lib/statistics/grid-distribution";

const none = gridOf(1, [1]);
const cycles = (level: number): ServiceGoal => ({ kind: "cycles", level });
const share = (level: number): ServiceGoal => ({ kind: "share", level });
const leadTimeUse = gridOf(1, [0.5, 0.4, 0.1]);

describe("reorder point", () => {
  it("is the least amount that is not exceeded in the wanted share of cycles", () => {
    const at = (level: number) =>
      reorderPoint({ undershoot: none, leadTimeUse, whole: true, goal: cycles(level), orderAmount: 10 });
    expect(at(0.5).amount).toBe(0);
    expect(at(0.9)).toMatchObject({ amount: 1, cycleLevel: 0.9 });
    expect(at(0.91)).toMatchObject({ amount: 2, cycleLevel: 1, filledShare: 1 });
  });

  it("of a shared goal lets as much be missing in a cycle as the share of the order says", () => {
    // Missing: 0.6 at 0, 0.1 at 1. Of orders of 10, 94 in 100 are filled at 0 and 99 at 1.
    const at = (level: number, orderAmount = 10) =>
      reorderPoint({ undershoot: none, leadTimeUse, whole: true, goal: share(level), orderAmount });
    expect(at(0.94)).toMatchObject({ amount: 0, cycleLevel: 0.5 });
    expect(at(0.95).amount).toBe(1);
    expect(at(0.99).filledShare).toBeCloseTo(0.99, 12);
    expect(at(0.995).amount).toBe(2);
    // Of larger orders the same shortage is less.
    expect(at(0.99, 60).amount).toBe(0);
  });

  it("counts what was used before a check saw it", () => {
    const twoAWeek = undershoot(gridOf(1, [0, 0, 1]), true);
    const without = { leadTimeUse, whole: true, goal: cycles(0.9), orderAmount: 10 };
    // None or one below, and 0, 1 or 2 until the delivery: up to 1 in 0.5 × 0.9 + 0.5 × 0.5 = 0.7, up to 2 in 0.95.
    expect(reorderPoint({ ...without, undershoot: twoAWeek })).toMatchObject({ amount: 2, expected: 1.1 });
  });

  it("against the textbook's case of batchy demand comes to 45 where the naive point is 39", () => {
    // Negative binomial, mean 5 and variance 15 a period, lead time 5, looked at every period, 95 %.
    const spread = { perUse: 1, dispersions: [0.4, 0.2, 0.4 / 3, 0.1, 0.08], whole: true };
    const point = reorderPoint({
      undershoot: undershoot(sumGrid(spread, { mean: 5, weeks: 1 }, 1), true),
      leadTimeUse: sumGrid(spread, { mean: 25, weeks: 5 }, 1),
      whole: true,
      goal: cycles(0.95),
      orderAmount: 100,
    });
    expect(point.amount).toBe(45);
    expect(point.expected).toBeCloseTo(28.5, 3);
  });

  it("refuses a level or an order that is none", () => {
    const of = { undershoot: none, leadTimeUse, whole: true, goal: cycles(1), orderAmount: 10 };
    expect(() => reorderPoint(of)).toThrow(RangeError);
    expect(() => reorderPoint({ ...of, goal: cycles(0.9), orderAmount: 0 })).toThrow(RangeError);
  });
});
