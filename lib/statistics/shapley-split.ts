/** Beyond this many factors the subsets are too many to try. */
const MOST_FACTORS = 12;

/**
 * Splits the change of a quantity over the factors that changed: each gets the mean of what its own change adds, over
 * all orders in which the factors may change. The parts add up to the whole change, no order is preferred, and a
 * factor that changes nothing gets nothing.
 *
 * @param factors number of factors, whole, from 0 to 12
 * @param value the quantity when the factors of a set (bit i for factor i) have changed and the others have not
 * @returns the part of each factor
 * @throws RangeError if the number of factors is not as said
 * @see Shapley, A value for n-person games (1953); for two factors that multiply it is Bennet's split (1920)
 * @example shapleySplit(2, (changed) => (changed & 1 ? 3 : 2) * (changed & 2 ? 7 : 5)) // [6, 5]
 */
export function shapleySplit(factors: number, value: (changed: number) => number): number[] {
  if (!Number.isSafeInteger(factors) || factors < 0 || factors > MOST_FACTORS) {
    throw new RangeError(`shapleySplit requires 0 to ${MOST_FACTORS} factors, got ${factors}`);
  }
  const sets = 2 ** factors;
  const values = Array.from({ length: sets }, (_, changed) => value(changed));
  const weights = Array.from({ length: factors }, (_, size) => 1 / (factors * choose(factors - 1, size)));
  return Array.from({ length: factors }, (_, factor) => {
    const bit = 2 ** factor;
    return values.reduce((sum, before, changed) => {
      if ((changed & bit) !== 0) return sum;
      return sum + (weights[bitsIn(changed)] ?? 0) * ((values[changed + bit] ?? 0) - before);
    }, 0);
  });
}

function choose(n: number, k: number): number {
  return Array.from({ length: k }, (_, i) => (n - i) / (i + 1)).reduce((product, each) => product * each, 1);
}

function bitsIn(set: number): number {
  return set === 0 ? 0 : (set & 1) + bitsIn(set >> 1);
}
