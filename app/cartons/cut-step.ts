import { USUAL_CUT } from "#lib/cartons/choice/cut-terms";
import type { Measures } from "#lib/units/measures";

/** A quarter of an inch: what stands on the ruler of a shop that measures in inches. */
const QUARTER_INCH_UM = 6_350;

/**
 * The steps in which a carton's height is cut, so that the height said can be read off the shop's own ruler.
 *
 * @param measures how the shop measures
 * @returns micrometres
 */
export function cutStep(measures: Measures): number {
  return measures === "imperial" ? QUARTER_INCH_UM : USUAL_CUT.stepUm;
}
