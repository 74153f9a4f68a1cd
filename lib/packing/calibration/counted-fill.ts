import { type Block, blockVolume } from "#lib/packing/block";
import { type Calibration, calibration } from "#lib/packing/calibration/calibration";

const CUBIC_MICROMETRES_PER_MILLILITRE = 1e12;
/** Loosely laid paper fills 1.65 times as much as stuffed; beyond twice that, a unit or a count is wrong. */
const SPAN = { least: 0.3, most: 3 };

/**
 * How thick a fill lies, from one empty carton that was filled and counted: inside volume / (units x area of one).
 *
 * @param filled - inside of the carton in micrometres, above zero; use units that filled it, and the flat area of one
 *   in square micrometres, above zero
 * @param replacesUm - the bulk in use so far, in micrometres
 * @returns bulk in micrometres, with what it replaces
 * @throws RangeError if a number is not above zero
 * @see computed from the geometry
 * @example countedFill({ inside: cube12, units: 33.2, unitArea: 557418240000 }, 1529).value // 1530
 */
export function countedFill(
  filled: { readonly inside: Block; readonly units: number; readonly unitArea: number },
  replacesUm: number,
): Calibration {
  const { inside, units, unitArea } = filled;
  if (!(units > 0 && unitArea > 0)) {
    throw new RangeError(`countedFill requires units and an area above zero, got ${units} and ${unitArea}`);
  }
  const bulkUm = (blockVolume(inside) * CUBIC_MICROMETRES_PER_MILLILITRE) / (units * unitArea);
  return calibration(bulkUm, replacesUm, SPAN);
}
