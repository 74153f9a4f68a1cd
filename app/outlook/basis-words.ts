import type { Day } from "#lib/units/day";
import { formatDay, formatDayLong } from "#lib/units/day-text";

/**
 * The line under a finding: the day, what a band is, and what all of it comes from.
 *
 * @param today day of the outlook
 * @param basis first day that was not looked at, and the share that is a guess, 0 to 1
 */
export function basisWords(
  today: Day,
  { until, guessedShare }: { readonly until: Day; readonly guessedShare: number },
): string {
  const from =
    guessedShare > 0 ? "From your guess and what was recorded before" : "From what was recorded before";
  return `${formatDayLong(today)}. 8 times in 10 it should come out between these two. ${from} ${formatDay(until)}: an estimate, not a promise.`;
}
