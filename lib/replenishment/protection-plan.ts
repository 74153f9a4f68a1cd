import { type ClosedCalendar, nextOpenDay, openDays } from "#lib/forecast/open-days";
import type { SubjectForecast } from "#lib/forecast/shop/subject-forecast";
import { sumGrid, sumReach } from "#lib/forecast/sum-grid";
import { sumVariance } from "#lib/forecast/sum-spread";
import { expectedUse, type UsePath } from "#lib/forecast/use-path";
import {
  type ArrivalChance,
  arrivalChances,
  usualArrival,
} from "#lib/replenishment/lead-time/arrival-chances";
import type { SupplierDelivery } from "#lib/replenishment/lead-time/supplier-delivery";
import { reorderPoint } from "#lib/replenishment/reorder-point";
import type { ServiceGoal } from "#lib/replenishment/service-goal";
import { undershoot } from "#lib/replenishment/undershoot";
import { type GridDistribution, gridMean, gridMixture } from "#lib/statistics/grid-distribution";
import { AMOUNT_PER_UNIT, type Amount, amount } from "#lib/units/amount";
import { addDays, type Day, daysBetween } from "#lib/units/day";

const DAYS_A_WEEK = 7;
/** Steps that a distribution is reckoned on, where pieces do not give them. */
const STEPS = 500;
const LEAST_STEP = 1e-6;
/** A sum of sevenths that should be whole may lie this much below it. */
const NEARLY_A_PART = 1e-5;

/** What must be on hand and on order to be safe until an order comes. */
export type ProtectionPlan = {
  readonly delivery: SupplierDelivery;
  /** when an order placed today may come */
  readonly arrivals: readonly ArrivalChance[];
  /** days until then as a rule */
  readonly leadTimeDays: number;
  /** from today until an order placed at the next check comes as a rule */
  readonly interval: { readonly until: Day; readonly days: number };
  readonly nextCheck: Day;
  /** open days in the interval */
  readonly openDays: number;
  readonly forecast: SubjectForecast;
  /** over the interval, taken to a week of open days */
  readonly usePerWeek: Amount;
  readonly goal: ServiceGoal;
  /** chance of lasting that days are reckoned with: the goal's own, or what a shared goal comes to */
  readonly level: number;
  /** expected over the whole interval, and its typical error: what the textbook starts from */
  readonly intervalUse: Amount;
  readonly intervalDeviation: Amount;
  /** expected to be used below the reorder point before a check sees it */
  readonly unseenUse: Amount;
  /** that, and what is used from there until the delivery */
  readonly expectedUse: Amount;
  /** typical error of that */
  readonly deviation: Amount;
  /** below 0 where the goal lets so much be missing */
  readonly safetyStock: number;
  readonly reorderPoint: Amount;
  /** share of order cycles in which stock lasts until the delivery */
  readonly cycleLevel: number;
  /** share of the need filled from stock */
  readonly filledShare: number;
};

/** What a plan is made of. */
export type ProtectionPlanQuestion = {
  readonly forecast: SubjectForecast;
  readonly today: Day;
  readonly delivery: SupplierDelivery;
  readonly reviewDays: number;
  readonly goal: ServiceGoal;
  /** weeks of use that an order brings as a rule */
  readonly coverWeeks: number;
  readonly calendar: ClosedCalendar;
};

/**
 * Protection plan: the reorder point of a supply that is looked at every review period. Stock falls below it between
 * two checks, by an amount that only the next check sees; the order then takes its lead time, which varies. What is
 * used in both together is a distribution, with the forecast's own error of sums in it; the point is its quantile, or
 * the amount beyond which no more is missing than the goal lets be.
 *
 * @param question the supply's forecast and the terms
 * @returns the plan with each of its parts
 * @throws RangeError when the goal's level is not between 0 and 1
 * @see `reorderPoint`, `undershoot`
 */
export function protectionPlan(question: ProtectionPlanQuestion): ProtectionPlan {
  const { forecast, today, delivery, calendar, goal } = question;
  const nextCheck = nextOpenDay(addDays(today, question.reviewDays), calendar);
  const arrivals = arrivalChances(today, delivery, calendar);
  const until = usualArrival(arrivalChances(nextCheck, delivery, calendar));
  const open = openDays(today, until, calendar);
  const mean = expectedUse(forecast.path, { from: today, until }, calendar);
  const usePerWeek = weeklyUseOf(forecast.path, mean, open);
  const uses = usesOf(question, { nextCheck, arrivals });
  const point = reorderPoint({
    ...uses,
    goal,
    orderAmount: Math.max(LEAST_STEP, (usePerWeek / AMOUNT_PER_UNIT) * question.coverWeeks),
  });
  const expected = amount(Math.floor(point.expected * AMOUNT_PER_UNIT + NEARLY_A_PART));
  const atLeast = amount(Math.ceil(point.amount * AMOUNT_PER_UNIT - NEARLY_A_PART));
  return {
    delivery,
    arrivals,
    leadTimeDays: daysBetween(today, usualArrival(arrivals)),
    interval: { until, days: daysBetween(today, until) },
    nextCheck,
    openDays: open,
    forecast,
    usePerWeek,
    goal,
    level: goal.kind === "cycles" ? goal.level : point.cycleLevel,
    intervalUse: amount(Math.round(mean * AMOUNT_PER_UNIT)),
    intervalDeviation: amount(
      Math.round(AMOUNT_PER_UNIT * Math.sqrt(intervalVariance(question, { mean, open, arrivals }))),
    ),
    unseenUse: amount(Math.round(gridMean(uses.undershoot) * AMOUNT_PER_UNIT)),
    expectedUse: expected,
    deviation: amount(Math.round(Math.sqrt(point.variance) * AMOUNT_PER_UNIT)),
    safetyStock: atLeast - expected,
    reorderPoint: atLeast,
    cycleLevel: point.cycleLevel,
    filledShare: point.filledShare,
  };
}

/** What is used unseen before a check, and from the order until its delivery. */
function usesOf(
  { forecast, today, calendar }: ProtectionPlanQuestion,
  { nextCheck, arrivals }: { readonly nextCheck: Day; readonly arrivals: readonly ArrivalChance[] },
): { undershoot: GridDistribution; leadTimeUse: GridDistribution; whole: boolean } {
  const { spread, path } = forecast;
  const sumUntil = (until: Day) => ({
    mean: expectedUse(path, { from: today, until }, calendar),
    weeks: Math.max(1, openDays(today, until, calendar)) / DAYS_A_WEEK,
  });
  const review = sumUntil(nextCheck);
  const leads = arrivals.map(({ day, chance }) => ({ chance, sum: sumUntil(day) }));
  const reach = sumReach(spread, review) + Math.max(...leads.map(({ sum }) => sumReach(spread, sum)));
  const whole = spread.whole && reach <= STEPS * 4;
  const step = whole ? 1 : Math.max(LEAST_STEP, reach / STEPS);
  return {
    whole,
    undershoot: undershoot(sumGrid(spread, review, step), whole),
    leadTimeUse: gridMixture(leads.map(({ chance, sum }) => ({ chance, grid: sumGrid(spread, sum, step) }))),
  };
}

/** Of the use over lead time and review period: the sum's own, and the daily use times the days that deliveries vary. */
function intervalVariance(
  { forecast, today }: ProtectionPlanQuestion,
  of: { readonly mean: number; readonly open: number; readonly arrivals: readonly ArrivalChance[] },
): number {
  const { mean, open, arrivals } = of;
  const days = arrivals.map(({ day, chance }) => ({ days: daysBetween(today, day), chance }));
  const usual = days.reduce((sum, each) => sum + each.chance * each.days, 0);
  const spreadDays = days.reduce((sum, each) => sum + each.chance * (each.days - usual) ** 2, 0);
  const perDay = mean / Math.max(1, open);
  const weeks = Math.max(1, open) / DAYS_A_WEEK;
  return sumVariance(forecast.spread, { mean, weeks }) + perDay * perDay * spreadDays;
}

/** At least 1 part, so that days of cover can be reckoned with it. */
function weeklyUseOf(path: UsePath, mean: number, open: number): Amount {
  const perWeek = open > 0 ? (mean * DAYS_A_WEEK) / open : (path.perWeek[0] ?? 0);
  return amount(Math.max(1, Math.round(perWeek * AMOUNT_PER_UNIT)));
}
