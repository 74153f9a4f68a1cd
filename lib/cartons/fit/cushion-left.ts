import { cartonFit } from "#lib/cartons/fit/carton-fit";
import type { FitEffort } from "#lib/cartons/fit/fit-effort";
import type { WrappedPiece } from "#lib/cartons/fit/fit-question";
import type { Block } from "#lib/packing/block";

/** No ruler at a packing table tells less. */
const STEP_UM = 1_000;

/**
 * The cushion that a carton leaves round wrapped pieces, the same on every side: what somebody who packs them so accepts.
 *
 * @param pieces wrapped, one or more, whole micrometres
 * @param inside inside sizes of the carton, whole micrometres
 * @param mostUm cushion that is asked for; more is not looked for
 * @param effort how hard to look with more than six pieces
 * @returns micrometres, a whole millimetre or all that was asked; null where they are not found to fit even without any
 * @throws RangeError if a size is not as `cartonFit` asks, or the cushion is below zero
 * @example cushionLeft([{ block: cube5, upright: false }], cube8, 50_800, QUICK_EFFORT) // 38000 of 38,100
 */
export function cushionLeft(
  pieces: readonly WrappedPiece[],
  inside: Block,
  mostUm: number,
  effort: FitEffort,
): number | null {
  if (!(mostUm >= 0)) throw new RangeError(`cushionLeft requires a cushion from zero, got ${mostUm}`);
  const fitsWith = (um: number): boolean => {
    const clearance = { wallsUm: um, baseUm: um, topUm: um };
    return cartonFit({ pieces, inside, clearance }, effort).kind === "fits";
  };
  if (fitsWith(mostUm)) return mostUm;
  if (!fitsWith(0)) return null;
  let [fits, fails] = [0, Math.ceil(mostUm / STEP_UM)];
  while (fails - fits > 1) {
    const middle = (fits + fails) >> 1;
    if (fitsWith(middle * STEP_UM)) fits = middle;
    else fails = middle;
  }
  return fits * STEP_UM;
}
