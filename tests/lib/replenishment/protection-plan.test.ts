import { describe, expect, it } from "vitest";
import { closedCalendar } from "#lib/forecast/open-days";
import { sumQuantile } from "#lib/forecast/sum-spread";
import { plainTerms } from "#lib/replenishment/lead-time/delivery-terms";
import { latenessBelief } from "#lib/replenishment/lead-time/lateness-belief";
import { type ProtectionPlanQuestion, protectionPlan } from "#lib/replenishment/protection-plan";
import { amountOfUnits, unitsOf } from "#lib/units/amount";
import { day } from "#lib/units/day";
import { onTime } from "./on-time";
import { supplyForecast } from "./supply-forecast";

const today = day("2026-11-25");
const spread = { perUse: 2, dispersions: [0.05, 0.04, 0.03], whole: false };
const question: ProtectionPlanQuestion = {
  forecast: supplyForecast(21, { spread }),
  today,
  delivery: onTime(9),
  reviewDays: 7,
  goal: { kind: "cycles", level: 0.95 },
  coverWeeks: 6,
  calendar: [],
};
const planOf = (changes: Partial<ProtectionPlanQuestion>) => protectionPlan({ ...question, ...changes });
const pointOf = (changes: Partial<ProtectionPlanQuestion>) => unitsOf(planOf(changes).reorderPoint);

describe("protection plan", () => {
  it("is lead time and review period long", () => {
    expect(planOf({})).toMatchObject({
      leadTimeDays: 9,
      interval: { until: "2026-12-11", days: 16 },
      openDays: 16,
      nextCheck: "2026-12-02",
      usePerWeek: amountOfUnits(21),
      intervalUse: amountOfUnits(48),
    });
  });

  it("waits for the shop to open, for the check and for the delivery", () => {
    const calendar = closedCalendar([{ fromDay: day("2026-12-24"), toDay: day("2027-01-03") }]);
    const plan = planOf({ today: day("2026-12-18"), delivery: onTime(3), calendar });
    expect(plan.nextCheck).toBe("2027-01-04");
    expect(plan.interval).toEqual({ until: "2027-01-07", days: 20 });
    // 18 to 23 December and 4 to 6 January.
    expect(plan.openDays).toBe(9);
  });

  it("expects what is used until the delivery, and half a check's use and more before it", () => {
    const plan = planOf({});
    // Undershoot E[D²] / (2 E[D]): a week has mean 21, variance 2 × 21 + 0.05 × 21² = 64.05.
    const unseen = (64.05 + 21 ** 2) / 42;
    expect(unitsOf(plan.unseenUse)).toBeCloseTo(unseen, 1);
    expect(unitsOf(plan.expectedUse)).toBeCloseTo(unseen + 27, 1);
    expect(plan.safetyStock).toBe(plan.reorderPoint - plan.expectedUse);
  });

  it("lies between the quantile of the lead time alone and that of the whole interval", () => {
    const of = (mean: number, weeks: number) => sumQuantile(spread, { mean, weeks }, 0.95);
    expect(pointOf({})).toBeGreaterThan(of(27, 9 / 7));
    expect(pointOf({})).toBeLessThan(of(48, 16 / 7));
  });

  it("keeps more where deliveries may be late, where the goal is higher, where past forecasts were worse", () => {
    const belief = latenessBelief([], { promisedDays: 9, orderedOn: today });
    expect(pointOf({ delivery: { terms: plainTerms(9), belief } })).toBeGreaterThan(pointOf({}));
    expect(pointOf({ goal: { kind: "cycles", level: 0.98 } })).toBeGreaterThan(pointOf({}));
    const worse = { ...spread, dispersions: [0.2, 0.2, 0.2] };
    expect(pointOf({ forecast: supplyForecast(21, { spread: worse }) })).toBeGreaterThan(pointOf({}));
  });

  it("of a share of the need keeps less than of as many cycles, and less the more an order brings", () => {
    const share = { kind: "share", level: 0.95 } as const;
    const plan = planOf({ goal: share });
    expect(plan.reorderPoint).toBeLessThan(planOf({}).reorderPoint);
    expect(plan.filledShare).toBeGreaterThanOrEqual(0.95);
    expect(plan.level).toBe(plan.cycleLevel);
    expect(pointOf({ goal: share, coverWeeks: 26 })).toBeLessThan(pointOf({ goal: share }));
  });

  it("may keep less than is expected to be used where the goal lets much be missing", () => {
    expect(planOf({ goal: { kind: "share", level: 0.8 }, coverWeeks: 26 }).safetyStock).toBeLessThan(0);
  });

  it("reckons whole pieces one by one", () => {
    const cartons = { perUse: 1, dispersions: [0.1], whole: true };
    const point = pointOf({ forecast: supplyForecast(4, { spread: cartons }) });
    expect(Number.isInteger(point)).toBe(true);
    expect(planOf({ forecast: supplyForecast(4, { spread: cartons }) }).cycleLevel).toBeGreaterThanOrEqual(
      0.95,
    );
  });
});
