import type { FitQuestion } from "#lib/cartons/fit/fit-question";
import type { Placement } from "#lib/cartons/fit/placement";
import { placementFaults } from "#lib/cartons/fit/placement-faults";

/**
 * Whether a placement answers a question, so that what was found for one carton can be carried to a larger one
 * without another search.
 *
 * @param question - pieces in the order in which they were placed, carton and clearance, micrometres
 * @param placement - one place for each piece
 * @returns whether every piece stands in an allowed turn, inside, and apart from the others
 * @example placementHolds({ ...question, inside: larger }, found) // true
 */
export function placementHolds(question: FitQuestion, placement: Placement): boolean {
  return placementFaults(question, placement).length === 0;
}
