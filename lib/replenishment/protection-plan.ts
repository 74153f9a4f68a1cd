import { sampleStandardDeviation } from "simple-statistics";
import { chooseWindow, FEWEST_ERRORS, type WindowChoice } from "#lib/forecast/choose-window";
import { type ForecastMethod, methodForecast } from "#lib/forecast/forecast-method";
import { type ClosedCalendar, openDays } from "#lib/forecast/open-days";
import { protectionErrors } from "#lib/forecast/protection-error";
import { type UsageHistory, WEEKS_WITHOUT_USE } from "#lib/forecast/usage-history";
import { type ProtectionInterval, protectionInterval } from "#lib/replenishment/order-by";
import { reorderPoint } from "#lib/replenishment/reorder-point";
import {
  safetyStock,
  serviceFactor,
  shortHistoryDeviation,
  shortHistoryFactor,
} from "#lib/replenishment/safety-stock";
import { rootMeanSquare } from "#lib/statistics/root-mean-square";
import { type Amount, amount } from "#lib/units/amount";
import type { Day } from "#lib/units/day";

const DAYS_A_WEEK = 7;
/** Weeks that the spread of a short history is taken from, at most. */
const SPREAD_WEEKS = 13;

/** How the expected use was found. */
export type PlanMethod =
  | WindowChoice
  /** nothing was used in the weeks the chosen average looks at: the use of 26 weeks, spread evenly */
  | { readonly kind: "rarely-used"; readonly method: ForecastMethod }
  | { readonly kind: "first-days"; readonly days: number };

/** Typical error of the forecast of the sum, in amounts, and how many of it are kept. */
export type PlanSpread = {
  readonly kind: "backtest" | "short-history" | "one-week";
  readonly deviation: number;
  readonly factor: number;
  /** errors of the backtest, or weeks the sample deviation was taken from */
  readonly seen: number;
};

/** What must be on hand and on order to be safe until an order placed at the next check comes. */
export type ProtectionPlan = {
  readonly leadTimeDays: number;
  readonly interval: ProtectionInterval;
  /** open days in the interval */
  readonly openDays: number;
  readonly method: PlanMethod;
  readonly usePerWeek: Amount;
  readonly spread: PlanSpread;
  readonly safetyStock: Amount;
  readonly expectedUse: Amount;
  readonly reorderPoint: Amount;
};

/** What a plan is made of. */
export type ProtectionPlanQuestion = {
  readonly history: Exclude<UsageHistory, { kind: "no-use" }>;
  readonly today: Day;
  readonly leadTimeDays: number;
  readonly reviewDays: number;
  /** 0 to 1, both excluded */
  readonly serviceLevel: number;
  readonly calendar: ClosedCalendar;
};

/**
 * Protection plan: expected use over lead time and review period, the error to reckon with, and the
 * reorder point they make.
 *
 * @param question the supply's history and the terms
 * @returns the plan with each of its parts
 * @throws RangeError when the service level is not between 0 and 1
 * @example protectionPlan({ history: { kind: "weeks", values: [120000], recentUse: 120000 }, today,
 *   leadTimeDays: 7, reviewDays: 7, serviceLevel: 0.95, calendar: [] }).expectedUse // 240000
 */
export function protectionPlan(question: ProtectionPlanQuestion): ProtectionPlan {
  const { history, today, leadTimeDays, reviewDays, serviceLevel, calendar } = question;
  const interval = protectionInterval(today, { leadTimeDays, reviewDays }, calendar);
  const open = openDays(today, interval.until, calendar);
  const horizonWeeks = Math.max(1, open) / DAYS_A_WEEK;
  const { method, perWeek } = expectedUsePerWeek(history, horizonWeeks);
  const usePerWeek = amount(Math.max(1, Math.round(perWeek)));
  const spread =
    history.kind === "weeks" && method.kind !== "first-days"
      ? spreadOfWeeks(history.values, method.method, { horizonWeeks, serviceLevel })
      : spreadOfOneWeek(usePerWeek, { horizonWeeks, serviceLevel });
  const safety = amount(Math.ceil(safetyStock(spread.factor, spread.deviation)));
  return {
    leadTimeDays,
    interval,
    openDays: open,
    method,
    usePerWeek,
    spread,
    safetyStock: safety,
    ...reorderPoint({ usePerWeek, openDays: open, safetyStock: safety }),
  };
}

function expectedUsePerWeek(
  history: ProtectionPlanQuestion["history"],
  horizonWeeks: number,
): { method: PlanMethod; perWeek: number } {
  if (history.kind === "days") {
    return {
      method: { kind: "first-days", days: history.days },
      perWeek: (history.used * DAYS_A_WEEK) / history.days,
    };
  }
  const choice = chooseWindow(history.values, horizonWeeks);
  const perWeek = methodForecast(choice.method, history.values);
  if (perWeek > 0) {
    return { method: choice, perWeek };
  }
  // No use in the last weeks does not mean that none will come.
  const window = Math.min(WEEKS_WITHOUT_USE, history.values.length);
  return {
    method: { kind: "rarely-used", method: { kind: "simple", window } },
    perWeek: history.recentUse / window,
  };
}

type SpreadTerms = { readonly horizonWeeks: number; readonly serviceLevel: number };

function spreadOfWeeks(values: readonly number[], method: ForecastMethod, terms: SpreadTerms): PlanSpread {
  const { horizonWeeks, serviceLevel } = terms;
  const errors = protectionErrors({ values, method, horizonWeeks, firstOrigin: method.window });
  if (errors.length >= FEWEST_ERRORS) {
    const deviation = rootMeanSquare(errors);
    return { kind: "backtest", deviation, factor: serviceFactor(serviceLevel), seen: errors.length };
  }
  const seen = values.slice(-SPREAD_WEEKS);
  const [first = 0] = seen;
  if (seen.length < 2) {
    return spreadOfOneWeek(first, terms);
  }
  return {
    kind: "short-history",
    deviation: shortHistoryDeviation(sampleStandardDeviation(seen), horizonWeeks, method.window),
    factor: shortHistoryFactor(serviceLevel, seen.length),
    seen: seen.length,
  };
}

/** One week shows no spread: it is taken to vary by as much as it is. A guess, no source. */
function spreadOfOneWeek(usePerWeek: number, { horizonWeeks, serviceLevel }: SpreadTerms): PlanSpread {
  return {
    kind: "one-week",
    deviation: shortHistoryDeviation(Math.abs(usePerWeek), horizonWeeks, 1),
    factor: serviceFactor(serviceLevel),
    seen: 1,
  };
}
