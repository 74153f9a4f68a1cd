/**
 * Pinball loss of a quantile: what falls short costs the chance, what is left over costs the rest, so that no other
 * number has a lower mean loss than the quantile itself.
 *
 * @param quantile what was said, any unit
 * @param actual what came
 * @param chance of which the quantile is, between 0 and 1
 * @returns in the same unit, from 0
 * @see Koenker and Bassett (1978), Regression quantiles, Econometrica 46 (from memory)
 * @example pinballLoss(10, 12, 0.95) // 1.9
 */
export function pinballLoss(quantile: number, actual: number, chance: number): number {
  const gap = actual - quantile;
  return gap >= 0 ? chance * gap : (chance - 1) * gap;
}
