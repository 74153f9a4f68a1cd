import { type ClosedCalendar, openDays } from "#lib/forecast/open-days";
import type { SubjectForecast } from "#lib/forecast/shop/subject-forecast";
import { sumQuantile, sumVariance } from "#lib/forecast/sum-spread";
import { expectedUse, type UsePath } from "#lib/forecast/use-path";
import { type ProtectionInterval, protectionInterval } from "#lib/replenishment/order-by";
import { AMOUNT_PER_UNIT, type Amount, amount } from "#lib/units/amount";
import type { Day } from "#lib/units/day";

const DAYS_A_WEEK = 7;
/** A sum of sevenths that should be whole may lie this much below it. */
const NEARLY_A_PART = 1e-5;

/** What must be on hand and on order to be safe until an order placed at the next check comes. */
export type ProtectionPlan = {
  readonly leadTimeDays: number;
  readonly interval: ProtectionInterval;
  /** open days in the interval */
  readonly openDays: number;
  readonly forecast: SubjectForecast;
  /** over the interval, taken to a week of open days */
  readonly usePerWeek: Amount;
  /** typical error of the forecast of the whole interval */
  readonly deviation: Amount;
  readonly expectedUse: Amount;
  readonly safetyStock: Amount;
  readonly reorderPoint: Amount;
};

/** What a plan is made of. */
export type ProtectionPlanQuestion = {
  readonly forecast: SubjectForecast;
  readonly today: Day;
  readonly leadTimeDays: number;
  readonly reviewDays: number;
  /** 0 to 1, both excluded */
  readonly serviceLevel: number;
  readonly calendar: ClosedCalendar;
};

/**
 * Protection plan: the use expected over lead time and review period, and the reorder point: the use over that time
 * that is not exceeded with the service level as its chance. What it holds above the expected use is the safety stock.
 *
 * @param question the supply's forecast and the terms
 * @returns the plan with each of its parts
 * @throws RangeError when the service level is not between 0 and 1
 * @see Silver, Pyke and Thomas (2017), Inventory and Production Management in Supply Chains, chapter 6: the order point
 * as a quantile of the demand over lead time and review period (from memory)
 */
export function protectionPlan(question: ProtectionPlanQuestion): ProtectionPlan {
  const { forecast, today, leadTimeDays, reviewDays, serviceLevel, calendar } = question;
  const interval = protectionInterval(today, { leadTimeDays, reviewDays }, calendar);
  const open = openDays(today, interval.until, calendar);
  const mean = expectedUse(forecast.path, { from: today, until: interval.until }, calendar);
  const sum = { mean, weeks: Math.max(1, open) / DAYS_A_WEEK };
  const quantile = sumQuantile(forecast.spread, sum, serviceLevel);
  // Rounded down so that "position at or under the reorder point" is exactly "the position less the safety stock is
  // used up by then" in whole amounts.
  const expected = amount(Math.floor(mean * AMOUNT_PER_UNIT + NEARLY_A_PART));
  const reorderPoint = amount(Math.max(expected, Math.ceil(quantile * AMOUNT_PER_UNIT)));
  return {
    leadTimeDays,
    interval,
    openDays: open,
    forecast,
    usePerWeek: weeklyUseOf(forecast.path, mean, open),
    deviation: amount(Math.round(Math.sqrt(sumVariance(forecast.spread, sum)) * AMOUNT_PER_UNIT)),
    expectedUse: expected,
    safetyStock: amount(reorderPoint - expected),
    reorderPoint,
  };
}

/** At least 1 part, so that days of cover can be reckoned with it. */
function weeklyUseOf(path: UsePath, mean: number, open: number): Amount {
  const perWeek = open > 0 ? (mean * DAYS_A_WEEK) / open : (path.perWeek[0] ?? 0);
  return amount(Math.max(1, Math.round(perWeek * AMOUNT_PER_UNIT)));
}
