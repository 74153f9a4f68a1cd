import type { PastWeek } from "#prisma/records/forecast-parts";

/**
 * What the last weeks took, as the forecast counts them.
 *
 * @param weeks weeks that are over, oldest first
 * @param count how many weeks
 * @returns null where the records do not reach that far
 */
export function lastWeeksSum(weeks: readonly Pick<PastWeek, "restated">[], count: number): number | null {
  if (weeks.length < count) return null;
  return weeks.slice(-count).reduce((sum, { restated }) => sum + restated, 0);
}
