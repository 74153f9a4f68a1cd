/** Chances of 0, 1, 2, ... steps; they add up to 1. */
export type GridDistribution = {
  /** what one step stands for, above 0, any unit */
  readonly step: number;
  readonly chances: Float64Array;
};

/** Chances that add up to the level but for rounding count as reaching it. */
const ROUNDING = 1e-12;

/**
 * A distribution on a grid from weights, which need not add up to 1.
 *
 * @param step what one step stands for, above 0
 * @param weights of 0, 1, 2, ... steps; from 0, not all of them 0
 * @throws RangeError when there is no weight above 0
 * @example gridOf(10, [1, 3]).chances // 0.25, 0.75
 */
export function gridOf(step: number, weights: ArrayLike<number>): GridDistribution {
  const chances = Float64Array.from(weights);
  const total = chances.reduce((sum, weight) => sum + weight, 0);
  if (!(total > 0 && step > 0)) {
    throw new RangeError(`gridOf requires a weight and a step above 0, got ${total} and ${step}`);
  }
  return { step, chances: chances.map((weight) => weight / total) };
}

/**
 * Distribution of the sum of two independent amounts.
 *
 * @param a one of them
 * @param b the other, on the same steps
 * @throws RangeError when the steps differ
 * @example gridSum(gridOf(1, [1, 1]), gridOf(1, [1, 1])).chances // 0.25, 0.5, 0.25
 */
export function gridSum(a: GridDistribution, b: GridDistribution): GridDistribution {
  if (a.step !== b.step) throw new RangeError(`gridSum requires equal steps, got ${a.step} and ${b.step}`);
  const chances = new Float64Array(a.chances.length + b.chances.length - 1);
  for (let at = 0; at < a.chances.length; at += 1) {
    const chance = a.chances[at] ?? 0;
    for (let shift = 0; shift < b.chances.length; shift += 1) {
      chances[at + shift] = (chances[at + shift] ?? 0) + chance * (b.chances[shift] ?? 0);
    }
  }
  return { step: a.step, chances };
}

/**
 * Distribution of an amount that follows one of several distributions, each with its chance.
 *
 * @param parts at least one, all on the same steps; chances from 0, not all of them 0
 * @throws RangeError when there is none or the steps differ
 * @example gridMixture([{ chance: 0.5, grid: gridOf(1, [1]) }, { chance: 0.5, grid: gridOf(1, [0, 1]) }]).chances // 0.5, 0.5
 */
export function gridMixture(
  parts: readonly { readonly chance: number; readonly grid: GridDistribution }[],
): GridDistribution {
  const step = parts[0]?.grid.step ?? 0;
  const weights = new Float64Array(Math.max(0, ...parts.map(({ grid }) => grid.chances.length)));
  for (const { chance, grid } of parts) {
    if (grid.step !== step)
      throw new RangeError(`gridMixture requires equal steps, got ${step} and ${grid.step}`);
    grid.chances.forEach((each, at) => {
      weights[at] = (weights[at] ?? 0) + chance * each;
    });
  }
  return gridOf(step, weights);
}

/**
 * Mean of a distribution on a grid, in the unit of its step.
 *
 * @param grid the distribution
 * @example gridMean(gridOf(10, [1, 1])) // 5
 */
export function gridMean({ step, chances }: GridDistribution): number {
  return step * chances.reduce((sum, chance, at) => sum + chance * at, 0);
}

/**
 * Quantile: the least grid amount that is not exceeded with at least the given chance.
 *
 * @param grid the distribution
 * @param level from 0 to 1
 * @returns in the unit of the step
 * @example gridQuantile(gridOf(1, [0.5, 0.4, 0.1]), 0.9) // 1
 */
export function gridQuantile({ step, chances }: GridDistribution, level: number): number {
  let reached = 0;
  for (const [at, chance] of chances.entries()) {
    reached += chance;
    if (reached >= level - ROUNDING) return at * step;
  }
  return (chances.length - 1) * step;
}

/**
 * Quantile of an amount that need not be a whole number of steps: the chance of a step is spread evenly over the half
 * steps around it.
 *
 * @param grid the distribution
 * @param level from 0 to 1
 * @returns in the unit of the step, from 0
 * @example gridQuantileBetween(gridOf(1, [0, 0.5, 0.5]), 0.75) // 2
 */
export function gridQuantileBetween({ step, chances }: GridDistribution, level: number): number {
  let reached = 0;
  for (const [at, chance] of chances.entries()) {
    if (chance > 0 && reached + chance >= level - ROUNDING) {
      return Math.max(0, at - 0.5 + (level - reached) / chance) * step;
    }
    reached += chance;
  }
  return (chances.length - 1) * step;
}

/**
 * Chance that an amount is not exceeded.
 *
 * @param grid the distribution
 * @param limit in the unit of the step; between two steps the lower one counts
 * @example gridUpTo(gridOf(1, [0.5, 0.4, 0.1]), 1) // 0.9
 */
export function gridUpTo({ step, chances }: GridDistribution, limit: number): number {
  const last = Math.floor(limit / step + ROUNDING);
  let reached = 0;
  for (let at = 0; at <= last && at < chances.length; at += 1) reached += chances[at] ?? 0;
  return Math.min(1, reached);
}

/**
 * Expected part of the amount beyond each grid amount: entry i is E[max(X - i steps, 0)].
 *
 * @param grid the distribution
 * @returns one entry for each step, in the unit of the step, falling to 0
 * @example gridShortages(gridOf(1, [0.5, 0.4, 0.1])) // 0.6, 0.1, 0
 */
export function gridShortages({ step, chances }: GridDistribution): Float64Array {
  const shortages = new Float64Array(chances.length);
  let above = 0;
  let short = 0;
  for (let at = chances.length - 1; at >= 0; at -= 1) {
    short += above * step;
    shortages[at] = short;
    above += chances[at] ?? 0;
  }
  return shortages;
}
