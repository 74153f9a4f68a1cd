import { normalQuantile } from "#lib/statistics/normal-quantile";

/**
 * Safety stock by the textbook: what is kept beside the expected use, so that stock lasts through the protection
 * interval in the share `serviceLevel` of the cases, if errors are normal. Shown beside the reorder point, as a person
 * can do it by hand.
 *
 * factor * deviation, never below 0
 *
 * @param factor how many deviations to keep, from `serviceFactor`
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
 * Deviations to keep for a service level: the normal quantile.
 *
 * @param serviceLevel wanted share of intervals without a shortage, between 0 and 1
 * @example serviceFactor(0.95) // 1.6448536269514722
 */
export function serviceFactor(serviceLevel: number): number {
  return normalQuantile(serviceLevel);
}
