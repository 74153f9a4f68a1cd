import { logGamma } from "#lib/statistics/log-gamma";

/** An urn: how many there are, how many of them are marked, how many are drawn; whole, none more than there are. */
type Urn = { readonly all: number; readonly marked: number; readonly drawn: number };

/**
 * Chance to draw at least so many marked ones without putting back: the one-sided exact test of R. A. Fisher for a table
 * of two by two.
 *
 * @param least marked ones drawn, whole, from 0
 * @param urn counts
 * @returns from 0 to 1
 * @throws RangeError when a count is not whole, or more are marked or drawn than there are
 * @see Fisher (1935), The Design of Experiments, chapter II: three of four cups right by chance alone in 17 of 70
 * @example hypergeometricTail(3, { all: 8, marked: 4, drawn: 4 }) // 17 / 70
 */
export function hypergeometricTail(least: number, { all, marked, drawn }: Urn): number {
  const counts = [least, all, marked, drawn];
  if (!counts.every((count) => Number.isSafeInteger(count) && count >= 0) || marked > all || drawn > all) {
    throw new RangeError(
      `hypergeometricTail requires whole counts, none above all, got ${least} with ${marked} and ${drawn} of ${all}`,
    );
  }
  let chance = 0;
  for (let seen = Math.max(least, marked + drawn - all); seen <= Math.min(marked, drawn); seen += 1) {
    chance += Math.exp(
      logChoose(marked, seen) + logChoose(all - marked, drawn - seen) - logChoose(all, drawn),
    );
  }
  return Math.min(1, chance);
}

function logChoose(from: number, take: number): number {
  return logGamma(from + 1) - logGamma(take + 1) - logGamma(from - take + 1);
}
