import { amount } from "#lib/units/amount";
import { formatAmount } from "#lib/units/amount-text";
import { formatDay } from "#lib/units/day-text";
import type { UseUnit } from "#lib/units/use-unit";
import type { UseWeek } from "./use-weeks";

/**
 * What the chart of use shows, in words: the most used week and the last whole one.
 *
 * @param weeks oldest first
 * @param unit the supply's use unit
 * @returns a sentence
 * @example findingOfUse([], "sheet") // "No use recorded yet."
 */
export function findingOfUse(weeks: readonly UseWeek[], unit: UseUnit): string {
  const whole = weeks.filter((week) => !week.isRunning);
  const last = whole.at(-1);
  const used = (week: UseWeek) => amount(week.packed + week.spoilt);
  if (last === undefined || weeks.every((week) => used(week) <= 0)) return "No whole week of use yet.";
  const top = whole.reduce((most, week) => (used(week) > used(most) ? week : most), last);
  const lastWords = `${formatAmount(used(last), unit)} went out last week`;
  if (top.weekStart === last.weekStart) return `${lastWords}, the most in ${whole.length} weeks.`;
  return `${lastWords}; the most was ${formatAmount(used(top), unit)} in the week of ${formatDay(top.weekStart)}.`;
}
