/** Rounding must not turn a tie into one pack more. */
const NEARLY = 1e-12;

/**
 * Whole packs nearest in cost to a lot that is no whole number of packs: the smallest n with n (n + 1) >= packs². Not
 * the nearest whole number: 1.45 packs make 2, as 1.45 is above sqrt(2).
 *
 * @param packs the economic order quantity in packs, from 0
 * @returns whole packs, at least 1; between equals the fewer
 * @throws RangeError when the packs are below 0 or not finite
 * @see the cost at n and at n + 1 is equal where n (n + 1) = packs² (worked out; checked against enumeration in the tests)
 * @example wholePacks(1.448) // 2
 */
export function wholePacks(packs: number): number {
  if (!(packs >= 0 && Number.isFinite(packs))) {
    throw new RangeError(`wholePacks requires packs from 0, got ${packs}`);
  }
  const square = packs * packs * (1 - NEARLY);
  const guess = Math.max(1, Math.floor(packs));
  return guess * (guess + 1) >= square ? guess : guess + 1;
}
