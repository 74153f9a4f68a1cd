import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type ProtectionPlanQuestion, protectionPlan } from "#lib/replenishment/protection-plan";
import { serviceFactor } from "#lib/replenishment/safety-stock";
import { day } from "#lib/units/day";

const base = { today: day("2026-11-25"), leadTimeDays: 7, reviewDays: 7, serviceLevel: 0.95, calendar: [] };
const planOf = (values: readonly number[], more: Partial<ProtectionPlanQuestion> = {}) =>
  protectionPlan({
    ...base,
    history: { kind: "weeks", values, recentUse: values.slice(-26).reduce((sum, value) => sum + value, 0) },
    ...more,
  });

describe("protection plan", () => {
  it("reproduces t(3) s sqrt(L + L^2 / 4) for four weeks (computed from the formula, no source)", () => {
    const weeks = [900, 1100, 900, 1100].map((value) => value * 1000);
    const plan = planOf(weeks);
    const sampleDeviation = Math.sqrt(40_000 / 3) * 1000;
    expect(plan.spread).toMatchObject({ kind: "short-history", seen: 4 });
    expect(plan.safetyStock).toBe(Math.ceil(2.35336343480182 * sampleDeviation * Math.sqrt(3)));
    expect(plan.reorderPoint).toBe(2_000_000 + plan.safetyStock);
  });

  it("keeps the normal factor times the root mean square of the past errors", () => {
    const values = Array.from({ length: 30 }, (_, week) => (week % 2 === 0 ? 80_000 : 120_000));
    const plan = planOf(values, { leadTimeDays: 0 });
    // Four weeks average 100,000; each single week misses by 20,000.
    expect(plan.spread).toEqual({
      kind: "backtest",
      deviation: 20_000,
      factor: serviceFactor(0.95),
      seen: 26,
    });
    expect(plan.safetyStock).toBe(Math.ceil(20_000 * serviceFactor(0.95)));
  });

  it("takes no use on closed days", () => {
    const calendar = [{ fromDay: day("2026-11-27"), toDay: day("2026-11-29") }];
    const plan = planOf([70, 70, 70, 70], { calendar });
    expect(plan.openDays).toBe(11);
    expect(plan.expectedUse).toBe(110);
  });

  it("spreads rare use evenly over 26 weeks", () => {
    const values = Array.from({ length: 40 }, (_, week) => (week === 20 ? 2600 : 0));
    const plan = planOf(values);
    expect(plan.method.kind).toBe("rarely-used");
    expect(plan.usePerWeek).toBe(100);
  });

  it("takes one week to vary by as much as it is", () => {
    const plan = planOf([100]);
    expect(plan.spread.kind).toBe("one-week");
    expect(plan.spread.deviation).toBeCloseTo(100 * Math.sqrt(2 + 4), 9);
  });

  it("takes the first days to a week", () => {
    const plan = protectionPlan({ ...base, history: { kind: "days", days: 3, used: 30 } });
    expect(plan.usePerWeek).toBe(70);
    expect(plan.method).toEqual({ kind: "first-days", days: 3 });
  });

  it("refuses a service level of 1", () => {
    expect(() => planOf([1, 2, 3, 4], { serviceLevel: 1 })).toThrow(RangeError);
  });

  it("never asks for less at a higher service level", () => {
    const history = fc.array(fc.integer({ min: 0, max: 1_000_000 }), { minLength: 1, maxLength: 50 });
    fc.assert(
      fc.property(history, fc.integer({ min: 50, max: 98 }), (values, percent) => {
        const low = planOf(values, { serviceLevel: percent / 100 });
        const high = planOf(values, { serviceLevel: (percent + 1) / 100 });
        expect(high.reorderPoint).toBeGreaterThanOrEqual(low.reorderPoint);
        expect(high.usePerWeek).toBe(low.usePerWeek);
      }),
    );
  });
});
