import type { ClosedCalendar } from "#lib/forecast/open-days";
import { protectionPlan } from "#lib/replenishment/protection-plan";
import type { PlayedSupply } from "#lib/replenishment/trial/played-supplies";
import type { TrialSpan, TrialTerms } from "#lib/replenishment/trial/trial-shop";
import { coverOn, type UsualOrder } from "#lib/replenishment/trial/usual-order";
import { unitsOf } from "#lib/units/amount";
import { addDays, daysBetween } from "#lib/units/day";

/** Reorder points are reckoned so many times in a span, evenly; between two they go over from one to the other. */
const RECKONINGS = 7;
/** Nor more often than this. */
const LEAST_DAYS = 14;

/** What a check orders by. In use units. */
export type CheckLevels = {
  readonly reorderPoint: number;
  /** where the position should be after an order */
  readonly orderUpTo: number;
  /** what comes later does not keep an order from going out; counted from the first day */
  readonly untilDay: number;
};

/** Levels of a supply at each check, and what the first of them promises. */
export type SupplyLevels = {
  /** the checks of the span in order */
  readonly checks: readonly CheckLevels[];
  /** share of order cycles without a shortage at the first check's reorder point */
  readonly cycleLevel: number;
  /** days from an order to its delivery as a rule, on the first day */
  readonly leadTimeDays: number;
};

/**
 * The levels that the weekly check would order a supply by at each check of a span: the protection plan's reorder point
 * for the terms, and that plus the use of the cover weeks. A supply's own goal goes before the shop's.
 *
 * @param supply what is known of it
 * @param question the offer it is ordered by, the terms, the span and the closed days
 * @returns levels by check
 * @throws RangeError when a term is out of range
 */
export function checkLevels(
  supply: PlayedSupply,
  question: {
    readonly order: UsualOrder;
    readonly terms: TrialTerms;
    readonly span: TrialSpan;
    readonly calendar: ClosedCalendar;
  },
): SupplyLevels {
  const { order, terms, span, calendar } = question;
  const { delivery } = order.offer;
  const apart = Math.max(LEAST_DAYS, Math.ceil(span.days / RECKONINGS));
  const plans = Array.from({ length: Math.ceil(span.days / apart) + 1 }, (_, at) => {
    const today = addDays(span.firstDay, at * apart);
    return protectionPlan({
      forecast: supply.forecastOn(today),
      today,
      delivery,
      reviewDays: terms.reviewDays,
      goal: supply.goal ?? terms.goal,
      coverWeeks: terms.coverWeeks,
      calendar,
    });
  });
  const points = plans.map((plan) => unitsOf(plan.reorderPoint));
  const checks = Array.from({ length: Math.ceil(span.days / terms.reviewDays) }, (_, check): CheckLevels => {
    const day = check * terms.reviewDays;
    const reorderPoint = between(points, day / apart);
    const cover = coverOn(supply, { day: addDays(span.firstDay, day), delivery, terms, calendar });
    return {
      reorderPoint,
      orderUpTo: reorderPoint + cover.covered,
      untilDay: daysBetween(span.firstDay, cover.until),
    };
  });
  const [first] = plans;
  if (first === undefined) throw new RangeError(`checkLevels requires days to play, got ${span.days}`);
  return { checks, cycleLevel: first.cycleLevel, leadTimeDays: first.leadTimeDays };
}

/** Between the two points beside a place in the list, in proportion. */
function between(points: readonly number[], at: number): number {
  const below = Math.floor(at);
  const from = points[below] ?? 0;
  return from + (at - below) * ((points[below + 1] ?? from) - from);
}
