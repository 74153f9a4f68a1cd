import { closedCalendar } from "#lib/forecast/open-days";
import { type ShopWeek, shopWeeks } from "#lib/forecast/shop-weeks";
import type { CheckAction, CheckRow } from "#lib/replenishment/check-row";
import { finding } from "#lib/replenishment/finding";
import { supplyOutlook } from "#lib/replenishment/supply-outlook";
import type { ShopTerms, SupplyOutlookInput } from "#lib/replenishment/supply-outlook-input";
import { type ToCount, toCount } from "#lib/replenishment/to-count";
import type { Day } from "#lib/units/day";

export type { CheckRow } from "#lib/replenishment/check-row";
export type { ShopTerms, SupplyOutlookInput } from "#lib/replenishment/supply-outlook-input";

/** What a weekly check says. */
export type WeeklyCheck = {
  readonly day: Day;
  /** most urgent first */
  readonly rows: readonly CheckRow[];
  readonly finding: string;
  readonly toCount: readonly ToCount[];
};

/** Unknown stock may be urgent, so it stands right after what is. */
const URGENCY: readonly CheckAction[] = [
  "order-today",
  "order-this-week",
  "count",
  "on-its-way",
  "order-later",
  "enough",
  "no-use",
];

/**
 * Weekly check: for each supply how long it lasts, by which day to order, how much and from whom.
 *
 * @param inputs what the records know of each supply; rows after today change nothing
 * @param terms what the shop has decided
 * @param today the day of the check, in the shop's time zone
 * @returns rows by urgency, the finding in one line, and what to count
 * @throws RangeError when a term is out of range or use is not given oldest first
 * @example weeklyCheck([], terms, day("2026-11-25")).finding // "No supplies yet: copy the recipes of what you sell, theirs come along."
 */
export function weeklyCheck(
  inputs: readonly SupplyOutlookInput[],
  terms: ShopTerms,
  today: Day,
): WeeklyCheck {
  if (!Number.isSafeInteger(terms.reviewDays) || terms.reviewDays < 1) {
    throw new RangeError(`weeklyCheck requires whole review days from 1, got ${terms.reviewDays}`);
  }
  const calendar = closedCalendar(terms.closed);
  const weeksOf = new Map<Day | null, readonly ShopWeek[]>();
  const rows = inputs
    .map((input) => {
      const { firstDay } = input;
      const weeks =
        weeksOf.get(firstDay) ?? shopWeeks({ firstDay, today, weekStartsOn: terms.weekStartsOn, calendar });
      weeksOf.set(firstDay, weeks);
      return supplyOutlook(input, { terms, today, calendar, weeks });
    })
    .toSorted(byUrgency);
  return { day: today, rows, finding: finding(rows, today), toCount: toCount(rows, today) };
}

function byUrgency(a: CheckRow, b: CheckRow): number {
  return (
    URGENCY.indexOf(a.action) - URGENCY.indexOf(b.action) ||
    compareDays(a.orderByDate, b.orderByDate) ||
    compareDays(a.carefulRunOutDate, b.carefulRunOutDate) ||
    a.supply.localeCompare(b.supply, "en")
  );
}

function compareDays(a: Day | null, b: Day | null): number {
  const [first, second] = [a ?? "~", b ?? "~"];
  if (first === second) {
    return 0;
  }
  return first < second ? -1 : 1;
}
