import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type ProtectionPlanQuestion, protectionPlan } from "#lib/replenishment/protection-plan";
import { gammaTails } from "#lib/statistics/gamma";
import { amountOfUnits, unitsOf } from "#lib/units/amount";
import { day } from "#lib/units/day";
import { supplyForecast } from "./supply-forecast";

const base = { today: day("2026-11-25"), leadTimeDays: 7, reviewDays: 7, serviceLevel: 0.95, calendar: [] };
const planOf = (perWeek: number, more: Partial<ProtectionPlanQuestion> = {}) =>
  protectionPlan({ ...base, forecast: supplyForecast(perWeek), ...more });
const uncertain = (perWeek: number, dispersion: number, perUse = 2, whole = false) =>
  supplyForecast(perWeek, { spread: { perUse, dispersions: [dispersion], whole } });

describe("protection plan", () => {
  it("expects the use of the open days from today until an order placed at the next check comes", () => {
    const plan = planOf(70);
    expect(plan.interval).toEqual({ until: "2026-12-09", days: 14 });
    expect(plan.expectedUse).toBe(amountOfUnits(140));
    expect(plan.reorderPoint).toBe(amountOfUnits(140));
    expect(plan.safetyStock).toBe(0);
  });

  it("takes no use on closed days", () => {
    const plan = planOf(70, { calendar: [{ fromDay: day("2026-11-27"), toDay: day("2026-11-29") }] });
    expect(plan.openDays).toBe(11);
    expect(plan.expectedUse).toBe(amountOfUnits(110));
    expect(plan.usePerWeek).toBe(amountOfUnits(70));
  });

  it("follows a use that rises from week to week", () => {
    const path = { firstWeek: day("2026-11-23"), perWeek: [70, 140, 210] };
    const plan = planOf(0, { forecast: supplyForecast(0, { path }) });
    // Wed to Sun 5 days of 10, a week of 20, Mon and Tue of 30.
    expect(plan.expectedUse).toBe(amountOfUnits(50 + 140 + 60));
    expect(plan.usePerWeek).toBe(amountOfUnits(125));
  });

  it("puts the reorder point where the gamma distribution of that mean and error leaves 5 in 100 above", () => {
    const plan = planOf(70, { forecast: uncertain(70, 0.05) });
    // Variance 2 × 140 + 0.05 × 140² = 1,260.
    expect(unitsOf(plan.deviation)).toBeCloseTo(Math.sqrt(1_260), 3);
    const { upper } = gammaTails(unitsOf(plan.reorderPoint), { shape: 140 ** 2 / 1_260, scale: 1_260 / 140 });
    expect(upper).toBeCloseTo(0.05, 5);
    expect(plan.reorderPoint).toBe(plan.expectedUse + plan.safetyStock);
  });

  it("counts whole pieces in whole pieces", () => {
    const plan = planOf(3, { forecast: uncertain(3, 0, 1, true) });
    // Poisson with mean 6: P(X <= 9) = 0.916, P(X <= 10) = 0.957.
    expect(plan.reorderPoint).toBe(amountOfUnits(10));
  });

  it("refuses a service level of 1", () => {
    expect(() => planOf(70, { forecast: uncertain(70, 0.1), serviceLevel: 1 })).toThrow(RangeError);
  });

  it("never asks for less at a higher service level, nor for less than the expected use", () => {
    const forecast = fc.record({
      perWeek: fc.double({ min: 0.01, max: 500, noNaN: true }),
      dispersion: fc.double({ min: 0, max: 2, noNaN: true }),
      whole: fc.boolean(),
    });
    fc.assert(
      fc.property(forecast, fc.integer({ min: 50, max: 98 }), ({ perWeek, dispersion, whole }, percent) => {
        const forecastOf = uncertain(perWeek, dispersion, 1, whole);
        const low = planOf(perWeek, { forecast: forecastOf, serviceLevel: percent / 100 });
        const high = planOf(perWeek, { forecast: forecastOf, serviceLevel: (percent + 1) / 100 });
        expect(high.reorderPoint).toBeGreaterThanOrEqual(low.reorderPoint);
        expect(low.reorderPoint).toBeGreaterThanOrEqual(low.expectedUse);
        expect(high.usePerWeek).toBe(low.usePerWeek);
      }),
    );
  });
});
