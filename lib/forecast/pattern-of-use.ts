import { mean, sampleVariance } from "simple-statistics";

/** How a supply is used: in most weeks or now and then, in like amounts or in unlike ones. */
export type PatternOfUse = {
  readonly kind: "smooth" | "intermittent" | "erratic" | "lumpy";
  /** mean weeks from one use to the next, the first counted from the start */
  readonly meanInterval: number;
  /** variance of the amounts used over their squared mean; 0 for a single use */
  readonly squaredVariation: number;
};

const LONG_INTERVAL = 1.32;
const LARGE_VARIATION = 0.49;

/**
 * Pattern of use, by the mean interval between uses (1.32) and the squared coefficient of variation of their
 * amounts (0.49).
 *
 * @param values use a week, oldest first
 * @returns the pattern, or null where nothing was used
 * @see Syntetos, Boylan and Croston (2005), On the categorization of demand patterns, Journal of the
 * Operational Research Society 56 (from memory)
 * @example patternOfUse([0, 0, 5, 0, 4])?.kind // "intermittent"
 */
export function patternOfUse(values: readonly number[]): PatternOfUse | null {
  const uses = values.filter((value) => value !== 0);
  if (uses.length === 0) return null;
  const weeksToLastUse = values.findLastIndex((value) => value !== 0) + 1;
  const meanInterval = weeksToLastUse / uses.length;
  const squaredVariation = uses.length < 2 ? 0 : sampleVariance(uses) / mean(uses) ** 2;
  const isLong = meanInterval > LONG_INTERVAL;
  const isLarge = squaredVariation > LARGE_VARIATION;
  return { kind: kindOf(isLong, isLarge), meanInterval, squaredVariation };
}

function kindOf(isLong: boolean, isLarge: boolean): PatternOfUse["kind"] {
  if (isLarge) return isLong ? "lumpy" : "erratic";
  return isLong ? "intermittent" : "smooth";
}
