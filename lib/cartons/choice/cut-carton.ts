import type { OfferedCarton } from "#lib/cartons/cost/packed-load";
import { cartonBlank } from "#lib/packing/carton-blank";

/**
 * A carton cut down to a lower inside height. Board weighs by its blank, so what was weighed uncut goes down by the strip
 * that is trimmed off; the price stays, as a whole carton is used up.
 *
 * @param carton uncut
 * @param heightUm new inside height in micrometres, above zero
 * @returns the carton with its new inside and mass, not rounded
 * @throws RangeError if a side is not above zero
 * @see `cartonBlank`
 * @example cutCarton(cube10, 175000).inside.heightUm // 175000
 */
export function cutCarton(carton: OfferedCarton, heightUm: number): OfferedCarton {
  const inside = { ...carton.inside, heightUm };
  const massMg = (carton.massMg * cartonBlank(inside)) / cartonBlank(carton.inside);
  return { ...carton, inside, massMg };
}
