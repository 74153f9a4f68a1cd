import type { ShopWeek } from "#lib/forecast/shop-weeks";
import { type Amount, amount } from "#lib/units/amount";
import type { Day } from "#lib/units/day";

/** What was used of a supply on one day; above 0 is use. */
export type DayUse = { readonly day: Day; readonly amount: Amount };

/** What was used of a supply in one week. */
export type WeekUse = { readonly weekStart: Day; readonly amount: Amount; readonly closed: boolean };

/**
 * Weekly use of a supply: the use of each day added to its week. Days outside the weeks are left out.
 *
 * @param useByDay use a day, oldest first; days without use may be missing
 * @param weeks the shop's weeks, oldest first
 * @returns one entry a week, oldest first, 0 where nothing was used
 * @throws RangeError when the days are not oldest first
 * @example weeklyUse([{ day: day("2026-11-10"), amount: amount(12000) }], weeksOfNovember)
 */
export function weeklyUse(useByDay: readonly DayUse[], weeks: readonly ShopWeek[]): WeekUse[] {
  const sums = weeks.map(() => 0);
  let at = 0;
  let before: Day | null = null;
  for (const use of useByDay) {
    if (before !== null && use.day < before) {
      throw new RangeError(`weeklyUse requires days oldest first, got ${use.day} after ${before}`);
    }
    before = use.day;
    while (use.day >= (weeks[at]?.nextWeekStart ?? "~")) {
      at += 1;
    }
    const week = weeks[at];
    if (week !== undefined && use.day >= week.weekStart) {
      sums[at] = (sums[at] ?? 0) + use.amount;
    }
  }
  return weeks.map((week, index) => ({
    weekStart: week.weekStart,
    amount: amount(sums[index] ?? 0),
    closed: week.closed,
  }));
}
