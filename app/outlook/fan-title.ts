import { formatDay } from "#lib/units/day-text";
import type { OutlookWeek } from "./outlook-weeks";
import { type QuantityUnit, quantity } from "./quantity";

/** So little more or less that no one would see it in the chart. */
const ALIKE = 0.1;

/**
 * What the fan chart shows, in words: the coming weeks are alike, or which is the highest.
 *
 * @param weeks past and coming weeks, oldest first
 * @param unit what is counted
 * @returns a sentence
 */
export function fanTitle(weeks: readonly OutlookWeek[], unit: QuantityUnit): string {
  const coming = weeks.flatMap(({ weekStart, expected }) =>
    expected === null ? [] : [{ weekStart, mean: expected.mean }],
  );
  const means = coming.map(({ mean }) => mean);
  const most = coming.find(({ mean }) => mean === Math.max(...means));
  const open = means.filter((mean) => mean > 0);
  if (most === undefined || open.length === 0) return "Nothing is expected in the coming weeks.";
  const least = Math.min(...open);
  const spread = most.mean === 0 ? 0 : (most.mean - least) / most.mean;
  if (spread <= ALIKE) return `The coming weeks look alike: about ${quantity(most.mean, unit)} each.`;
  return `The highest of the coming weeks is that of ${formatDay(most.weekStart)}, about ${quantity(most.mean, unit)}.`;
}
