import { type Day, day } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import type { SpendMonth } from "./spend-months";

/**
 * The heading of the spending: the latest month, and the mean of those before it, as far as they are over.
 *
 * @param months the latest first, at least one
 * @param today the shop's day
 * @param money writes minor units
 * @returns a sentence without its full stop
 */
export function spendFinding(
  months: readonly SpendMonth[],
  today: Day,
  money: (minor: number) => string,
): string {
  const [latest, ...before] = months;
  if (latest === undefined) return "Nothing was spent on supplies";
  const isRunning = latest.month === today.slice(0, 7);
  const words = `${money(latest.minor)} spent ${isRunning ? "so far " : ""}in ${monthWords(latest.month)}`;
  if (before.length === 0) return words;
  const mean = before.reduce((sum, month) => sum + month.minor, 0) / before.length;
  return `${words}; ${money(Math.round(mean))} a month before it`;
}

/**
 * A month in words.
 *
 * @param month "2026-11"
 * @returns "Nov 2026"
 * @example monthWords("2026-11") // "Nov 2026"
 */
export function monthWords(month: string): string {
  return formatDay(day(`${month}-01`), { year: true }).replace(/^1 /, "");
}
