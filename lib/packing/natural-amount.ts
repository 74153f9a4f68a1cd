import { AMOUNT_PER_UNIT, type Amount, amount } from "#lib/units/amount";
import type { UseUnit } from "#lib/units/use-unit";

/** Steps in one use unit that a packer takes: half sheets, inches of a foot, five centimetres of a metre. */
const STEPS: Readonly<Record<UseUnit, number>> = {
  sheet: 2,
  piece: 2,
  "square-foot": 2,
  "square-metre": 20,
  foot: 12,
  metre: 20,
  each: 1,
  strip: 1,
};

/**
 * An amount rounded up to what a packer would take.
 *
 * @param theory - amount in theory, zero or more
 * @param unit - use unit
 * @returns the next half sheet, half piece, inch of a foot, or whole each
 * @throws RangeError if the amount is below zero
 * @see common practice, no source
 * @example naturalAmount(amountOfUnits(7.15), "sheet") // 7½ sheets
 */
export function naturalAmount(theory: Amount, unit: UseUnit): Amount {
  if (theory < 0) throw new RangeError(`naturalAmount requires an amount from zero, got ${theory}`);
  const step = naturalStep(unit);
  return amount(Math.ceil(theory / step) * step);
}

/**
 * The step in which a packer takes a supply.
 *
 * @param unit - use unit
 * @returns the amount of one step
 * @example naturalStep("sheet") // half a sheet
 */
export function naturalStep(unit: UseUnit): Amount {
  return amount(AMOUNT_PER_UNIT / STEPS[unit]);
}
