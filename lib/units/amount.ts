import type { Brand } from "#lib/units/brand";

/** A quantity of a supply: a safe integer of 1/12,000 of its use unit. */
export type Amount = Brand<number, "amount">;

/**
 * Parts in one use unit. Halves, thirds, quarters, eighths, sixteenths, twelfths and thousandths are all whole
 * numbers of parts, so sums of them stay exact; an inch is exact in feet.
 */
export const AMOUNT_PER_UNIT = 12_000;

/**
 * An amount from its stored parts.
 *
 * @param parts - whole number of 1/12,000 use unit; negative where stock is below zero
 * @returns the same number, as an amount
 * @throws RangeError if `parts` is not a safe integer
 * @example amount(6000) // half a use unit
 */
export function amount(parts: number): Amount {
  if (!Number.isSafeInteger(parts)) throw new RangeError(`amount requires a safe integer, got ${parts}`);
  return (parts === 0 ? 0 : parts) as Amount;
}

/**
 * The amount nearest to a number of use units.
 *
 * @param units - use units; may be a fraction
 * @returns the nearest 1/12,000, a half rounded up
 * @throws RangeError if `units` is not finite or too large to stay a safe integer
 * @example amountOfUnits(0.5) // 6000
 */
export function amountOfUnits(units: number): Amount {
  return amount(Math.round(units * AMOUNT_PER_UNIT));
}

/**
 * Use units in an amount, for reckoning and display; the stored parts stay the truth.
 *
 * @param value - amount
 * @returns use units
 * @example unitsOf(amount(18000)) // 1.5
 */
export function unitsOf(value: Amount): number {
  return value / AMOUNT_PER_UNIT;
}

/**
 * An exact fraction of a use unit.
 *
 * @param numerator - whole number
 * @param denominator - positive whole number
 * @returns the amount, without rounding
 * @throws RangeError if the fraction is not a whole number of 1/12,000 use unit
 * @example amountFraction(1, 3) // 4000
 */
export function amountFraction(numerator: number, denominator: number): Amount {
  const parts = numerator * AMOUNT_PER_UNIT;
  const exact =
    Number.isSafeInteger(parts) &&
    Number.isSafeInteger(denominator) &&
    denominator > 0 &&
    parts % denominator === 0;
  if (!exact) {
    throw new RangeError(
      `amountFraction requires a fraction that is a whole number of 1/12,000, got ${numerator}/${denominator}`,
    );
  }
  return amount(parts / denominator);
}

/**
 * The exact sum of amounts of one supply.
 *
 * @param list - amounts; may be empty
 * @returns their sum
 * @throws RangeError if the sum is not a safe integer
 * @example sumAmounts([amount(4000), amount(4000), amount(4000)]) // 12000
 */
export function sumAmounts(list: readonly Amount[]): Amount {
  return list.reduce((sum, value) => amount(sum + value), amount(0));
}

/**
 * An amount taken a whole number of times.
 *
 * @param value - amount
 * @param whole - whole number of times; -1 reverses
 * @returns the exact product
 * @throws RangeError if `whole` is not an integer or the product is not a safe integer
 * @example scaleAmount(amount(4000), 6) // 24000
 */
export function scaleAmount(value: Amount, whole: number): Amount {
  if (!Number.isSafeInteger(whole)) throw new RangeError(`scaleAmount requires a whole number, got ${whole}`);
  return amount(value * whole);
}
