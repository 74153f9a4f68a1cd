import { type CartonCost, type CartonTerms, cartonCost } from "#lib/cartons/cost/carton-cost";
import type { OfferedCarton, PackedLoad } from "#lib/cartons/cost/packed-load";
import { blockVolume } from "#lib/packing/block";

/** A load that fills a carton to the brim may be a last digit over it. */
const ROUNDING = 1 + 1e-9;

/**
 * What a load costs in a carton, or that it takes more than the inside.
 *
 * @param load what goes in; whether it fits is not asked here
 * @param carton inside, board, mass and price
 * @param terms fill, tape, bulge and postage
 * @returns the cost, or null where the load takes more room than there is
 * @throws RangeError as `cartonCost`
 * @example costInCarton(mugLoad, cube4, terms) // null
 */
export function costInCarton(load: PackedLoad, carton: OfferedCarton, terms: CartonTerms): CartonCost | null {
  const roomMl = blockVolume(carton.inside);
  if (load.ml > roomMl * ROUNDING) return null;
  return cartonCost({ ...load, ml: Math.min(load.ml, roomMl) }, carton, terms);
}
