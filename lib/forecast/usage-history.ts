import type { CountCorrection } from "#lib/forecast/count-correction";
import type { DayUse, WeekUse } from "#lib/forecast/weekly-use";
import { addDays, type Day, daysBetween, maxDay, minDay } from "#lib/units/day";

/** Without use for so long a supply counts as not used. */
export const WEEKS_WITHOUT_USE = 26;
const DAYS_A_WEEK = 7;

/** What the records say of a supply's use, in amounts, the counts' correction applied. */
export type UsageHistory =
  /** nothing used in 26 weeks; `recordedDays` is how long the shop has records, 0 without any */
  | { readonly kind: "no-use"; readonly recordedDays: number }
  /** no week is over yet: the use of the first days */
  | { readonly kind: "days"; readonly days: number; readonly used: number }
  /** weekly use from the week of the first use on, closed weeks left out, oldest first */
  | { readonly kind: "weeks"; readonly values: readonly number[]; readonly recentUse: number };

/** What a history is made of. */
export type UsageHistoryQuestion = {
  readonly useByDay: readonly DayUse[];
  readonly weeks: readonly WeekUse[];
  readonly firstDay: Day | null;
  readonly today: Day;
  readonly correction: CountCorrection;
};

/**
 * History of a supply's use, ready to be averaged. It starts in the week of the supply's first use:
 * weeks before that say nothing of a supply that was not there yet.
 *
 * @param question use a day up to today (oldest first), use a week, first day of records, today, the
 * correction by counts
 * @returns weeks, or the first days when no week is over, or that there is no use
 * @example usageHistory({ useByDay: [], weeks: [], firstDay: null, today, correction: { kind: "none" } })
 *   // { kind: "no-use", recordedDays: 0 }
 */
export function usageHistory(question: UsageHistoryQuestion): UsageHistory {
  const { useByDay, weeks, firstDay, today, correction } = question;
  const factor = correction.kind === "corrected" ? correction.factor : 1;
  const firstUse = useByDay.find((use) => use.amount > 0)?.day;
  const recentUse = factor * usedFrom(useByDay, addDays(today, 1 - DAYS_A_WEEK * WEEKS_WITHOUT_USE));
  if (firstUse === undefined || recentUse <= 0) {
    return {
      kind: "no-use",
      recordedDays: firstDay === null ? 0 : Math.max(0, daysBetween(firstDay, today)),
    };
  }
  const beforeFirstWeek = addDays(firstUse, -DAYS_A_WEEK);
  const values = weeks
    .filter((week) => !week.closed && week.weekStart > beforeFirstWeek)
    .map((week) => week.amount * factor);
  const lastWeek = weeks.at(-1);
  const onlyPartial =
    weeks.length === 1 && lastWeek !== undefined && lastWeek.weekStart < (firstDay ?? firstUse);
  if (values.length > 0 && !onlyPartial) {
    return { kind: "weeks", values, recentUse };
  }
  const weekAgo = addDays(today, 1 - DAYS_A_WEEK);
  const from = maxDay(firstDay ?? firstUse, minDay(firstUse, weekAgo));
  return { kind: "days", days: daysBetween(from, today) + 1, used: factor * usedFrom(useByDay, from) };
}

function usedFrom(useByDay: readonly DayUse[], from: Day): number {
  return useByDay.reduce((sum, use) => (use.day >= from ? sum + use.amount : sum), 0);
}
