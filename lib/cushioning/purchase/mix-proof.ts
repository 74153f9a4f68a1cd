import type { MixCosts } from "#lib/cushioning/purchase/costed-mix";

/** How good a plan is known to be. */
export type MixProof = {
  /** no plan that leaves as little undone costs less in total, minor units; null where nothing is proven */
  readonly boundMinor: number | null;
  /**
   * how much cheaper a plan could be at most, as a share of this one's gross cost (goods, delivery, postage, other): the
   * total may be near or below 0, as what is left over is taken off. Null where nothing is proven.
   */
  readonly gap: number | null;
  /** whether no purchase leaves less undone, as far as that is proven */
  readonly leastUndone: boolean;
  /** whether the gap is within the one asked for, and no purchase leaves less undone */
  readonly proven: boolean;
  /** seconds from the question to the answer */
  readonly seconds: number;
};

/** Share by which the sums of a solver that proved its answer may be off. */
const ROUNDING = 1e-6;

/**
 * How good a plan is, held against a bound.
 *
 * @param costs what the plan costs
 * @param known a total that no plan is below, minus Infinity where there is none; whether nothing leaves less undone;
 *   the gap that was asked for; the seconds taken
 * @returns bound, gap and verdict
 */
export function mixProof(
  { totalMinor, grossMinor }: Pick<MixCosts, "totalMinor" | "grossMinor">,
  known: {
    readonly bound: number;
    readonly leastUndone: boolean;
    readonly gapAsked: number;
    readonly seconds: number;
  },
): MixProof {
  const { leastUndone, seconds } = known;
  const boundMinor = Number.isFinite(known.bound) ? Math.min(known.bound, totalMinor) : null;
  const gap = boundMinor === null ? null : (totalMinor - boundMinor) / Math.max(1, grossMinor);
  const proven = leastUndone && gap !== null && gap <= known.gapAsked + ROUNDING;
  return { boundMinor, gap, leastUndone, proven, seconds };
}
