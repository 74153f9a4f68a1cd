import { normalQuantile } from "#lib/statistics/normal-quantile";
import { studentTQuantile } from "#lib/statistics/student-t-quantile";

/**
 * Safety stock: what is kept beside the expected use, so that stock lasts through the protection
 * interval in the share `serviceLevel` of the cases.
 *
 * factor * deviation, never below 0
 *
 * @param factor how many deviations to keep, from `serviceFactor` or `shortHistoryFactor`
 * @param deviation typical error of the forecast of the SUM over the protection interval, any unit
 * @returns in the unit of the deviation, not rounded
 * @throws RangeError when the deviation is below 0
 * @see Silver, Pyke and Thomas (2017), Inventory and Production Management in Supply Chains, chapter 6
 * (from memory)
 * @example safetyStock(1.65, 10) // 16.5
 */
export function safetyStock(factor: number, deviation: number): number {
  if (!(deviation >= 0)) {
    throw new RangeError(`safetyStock requires a deviation from 0, got ${deviation}`);
  }
  return Math.max(0, factor * deviation);
}

/**
 * Deviations to keep for a service level when the spread is well known: the normal quantile.
 *
 * @param serviceLevel wanted share of intervals without a shortage, between 0 and 1
 * @example serviceFactor(0.95) // 1.6448536269514722
 */
export function serviceFactor(serviceLevel: number): number {
  return normalQuantile(serviceLevel);
}

/**
 * Deviations to keep when the spread itself is known from few weeks: the Student t quantile.
 *
 * @param serviceLevel wanted share of intervals without a shortage, between 0 and 1
 * @param weeks weeks the sample deviation was taken from, at least 2
 * @example shortHistoryFactor(0.95, 4) // 2.3533634348018
 */
export function shortHistoryFactor(serviceLevel: number, weeks: number): number {
  return studentTQuantile(serviceLevel, weeks - 1);
}

/**
 * Deviation of the forecast error of a sum over the coming weeks, when the mean comes from few weeks:
 * the weeks vary, and the mean may be off in each of them.
 *
 * s * sqrt(L + L^2 / n)
 *
 * @param weekDeviation sample deviation of the weekly use, any unit
 * @param horizonWeeks L, weeks in the protection interval
 * @param weeksAveraged n, weeks the mean was taken from, at least 1
 * @returns in the unit of the week's deviation
 * @throws RangeError when no week was averaged
 * @example shortHistoryDeviation(10, 2, 4) // 17.320508075688775
 */
export function shortHistoryDeviation(
  weekDeviation: number,
  horizonWeeks: number,
  weeksAveraged: number,
): number {
  if (!(weeksAveraged >= 1)) {
    throw new RangeError(`shortHistoryDeviation requires at least 1 week, got ${weeksAveraged}`);
  }
  return weekDeviation * Math.sqrt(horizonWeeks + horizonWeeks ** 2 / weeksAveraged);
}
