import { naturalStep } from "#lib/packing/natural-amount";
import { AMOUNT_PER_UNIT, type Amount, amount } from "#lib/units/amount";
import type { UseUnit } from "#lib/units/use-unit";

/** What is folded or torn in halves is also taken in thirds and quarters. */
const TORN_PARTS: readonly number[] = [1, 2, 3, 4];

/**
 * The plainest amount close to what was worked out: whole units if they are close enough, else halves, thirds and quarters
 * of a sheet, inches of a foot, five centimetres of a metre; the closest of these where none is. What is taken whole stays
 * whole.
 *
 * @param units worked out, use units, from 0
 * @param tolerance how far off it may be, use units, from 0
 * @param unit use unit
 * @returns the amount, exact; never 0 for something above it
 * @throws RangeError when a number is below 0 or not finite
 * @see common practice, no source
 * @example plainAmount(12.8, 0.4, "sheet") // 13 sheets
 */
export function plainAmount(units: number, tolerance: number, unit: UseUnit): Amount {
  if (!(units >= 0 && tolerance >= 0 && Number.isFinite(units) && Number.isFinite(tolerance))) {
    throw new RangeError(`plainAmount requires numbers from 0, got ${units} and ${tolerance}`);
  }
  const steps = AMOUNT_PER_UNIT / naturalStep(unit);
  const finest = steps === 2 ? TORN_PARTS : [1, steps];
  const choices = finest
    .map((part) => {
      const parts = (Math.round(units * part) * AMOUNT_PER_UNIT) / part;
      return { parts, gap: Math.abs(parts / AMOUNT_PER_UNIT - units) };
    })
    .filter(({ parts }) => parts > 0 || units === 0);
  const closeEnough = choices.find(({ gap }) => gap <= tolerance);
  const closest = choices.toSorted((a, b) => a.gap - b.gap)[0];
  return amount((closeEnough ?? closest)?.parts ?? AMOUNT_PER_UNIT / Math.max(...finest));
}
