import type { DayUse } from "#lib/forecast/weekly-use";
import { addDays, type Day } from "#lib/units/day";

const WEEKS_LOOKED_AT = 26;
const FEWEST_DIFFERENCES = 2;
const LEAST = 0.5;
const MOST = 2;

/** What the counts say of the booked use: multiply it by `factor`. */
export type CountCorrection =
  | { readonly kind: "none" }
  | {
      readonly kind: "corrected";
      readonly factor: number;
      readonly differences: number;
      /** in amounts, below 0 where more was used than booked */
      readonly differenceSum: number;
      /** in amounts */
      readonly recordedUse: number;
    };

/**
 * Correction of the booked use by the counts of the last 26 weeks: what the counts found missing was
 * used too. Needs two count differences and some recorded use; held between a half and twice.
 *
 * (recorded use - sum of count differences) / recorded use
 *
 * @param useByDay use a day, oldest first
 * @param countDifferences count less book, below 0 where more was used than booked; without openings
 * @param today later rows are not looked at
 * @returns the factor with what it was made of, or `none`
 * @example countCorrection(useOf100, [minus5, minus5], today) // factor 1.1
 */
export function countCorrection(
  useByDay: readonly DayUse[],
  countDifferences: readonly DayUse[],
  today: Day,
): CountCorrection {
  const after = addDays(today, -7 * WEEKS_LOOKED_AT);
  const recent = (row: DayUse): boolean => row.day > after && row.day <= today;
  const differences = countDifferences.filter(recent);
  const recordedUse = useByDay.filter(recent).reduce((sum, row) => sum + row.amount, 0);
  if (differences.length < FEWEST_DIFFERENCES || recordedUse <= 0) {
    return { kind: "none" };
  }
  const differenceSum = differences.reduce((sum, row) => sum + row.amount, 0);
  const factor = Math.min(MOST, Math.max(LEAST, (recordedUse - differenceSum) / recordedUse));
  return { kind: "corrected", factor, differences: differences.length, differenceSum, recordedUse };
}
