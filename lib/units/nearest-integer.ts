/**
 * The integer nearest to an exact fraction; a half goes to the even neighbour, so that many roundings do not drift.
 *
 * @param numerator - whole number
 * @param denominator - positive whole number
 * @returns numerator / denominator, rounded half to even
 * @throws RangeError if the denominator is not positive or the answer is not a safe integer
 * @example nearestInteger(5n, 2n) // 2
 */
export function nearestInteger(numerator: bigint, denominator: bigint): number {
  if (denominator <= 0n) {
    throw new RangeError(`nearestInteger requires a positive denominator, got ${denominator}`);
  }
  const size = numerator < 0n ? -numerator : numerator;
  const rounded = Number(roundedHalfEven(size, denominator));
  if (!Number.isSafeInteger(rounded)) {
    throw new RangeError(`nearestInteger requires an answer that is a safe integer, got ${rounded}`);
  }
  return numerator < 0n && rounded !== 0 ? -rounded : rounded;
}

function roundedHalfEven(size: bigint, denominator: bigint): bigint {
  const floor = size / denominator;
  const twiceRest = (size % denominator) * 2n;
  if (twiceRest === denominator) return floor % 2n === 0n ? floor : floor + 1n;
  return twiceRest > denominator ? floor + 1n : floor;
}
