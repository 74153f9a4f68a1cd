import type { Amount } from "#lib/units/amount";
import { amount } from "#lib/units/amount";

/** What is left of something, with the least and most that it may be where ruler or scale were misread. */
export type PartStock = { readonly amount: Amount; readonly low: Amount; readonly high: Amount };

/**
 * What a reading says, and what it would say misread by as much as may happen: both ends are kept within what the roll
 * or pile can be.
 *
 * @param reading - length in micrometres or mass in milligrams as read; `error` by which it may be off, zero or more;
 *   `least` and `most` that can be read
 * @param amountAt - the amount at a reading; never falls as the reading rises
 * @returns the amount, and the amounts at both ends
 * @throws RangeError if the error is below zero
 * @example misread({ reading: 304800, error: 3175, least: 76200, most: 469900 }, feetAt) // 71 ft, 69 to 72
 */
export function misread(
  reading: {
    readonly reading: number;
    readonly error: number;
    readonly least: number;
    readonly most: number;
  },
  amountAt: (reading: number) => Amount,
): PartStock {
  if (!(reading.error >= 0))
    throw new RangeError(`misread requires an error from zero, got ${reading.error}`);
  return {
    amount: amountAt(reading.reading),
    low: amountAt(Math.max(reading.least, reading.reading - reading.error)),
    high: amountAt(Math.min(reading.most, reading.reading + reading.error)),
  };
}

/**
 * Several rolls or piles together. One ruler misreads them all the same way, so that the ends add up as well.
 *
 * @param parts - open rolls, piles, and whole ones
 * @returns the sum
 * @throws RangeError if the sum is not a safe integer
 * @example sumOfParts([halfRoll, endOfRoll]).amount
 */
export function sumOfParts(parts: readonly PartStock[]): PartStock {
  return parts.reduce(
    (sum, part) => ({
      amount: amount(sum.amount + part.amount),
      low: amount(sum.low + part.low),
      high: amount(sum.high + part.high),
    }),
    { amount: amount(0), low: amount(0), high: amount(0) },
  );
}
