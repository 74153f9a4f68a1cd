import type { FitEffort } from "#lib/cartons/fit/fit-effort";
import { fitProblem } from "#lib/cartons/fit/fit-problem";
import type { FitQuestion } from "#lib/cartons/fit/fit-question";
import { type NoFitReason, noFitReason } from "#lib/cartons/fit/no-fit-reason";
import { type FitTries, packingSearch } from "#lib/cartons/fit/packing-search";
import type { Placement } from "#lib/cartons/fit/placement";
import { placementFaults } from "#lib/cartons/fit/placement-faults";
import { settledPlacement } from "#lib/cartons/fit/settled-placement";

/** Whether pieces fit a carton. */
export type CartonFit =
  | { readonly kind: "fits"; readonly placement: Placement }
  | { readonly kind: "does-not-fit"; readonly reason: NoFitReason }
  /** nothing found and nothing proven: both are possible */
  | { readonly kind: "not-proven"; readonly tried: FitTries };

/**
 * Whether wrapped pieces fit a carton with the clearance left free, edges parallel to the carton's. "Fits" has been checked
 * place by place; "does not fit" is proven by a bound or by a search of all arrangements. Up to six pieces a larger carton
 * never stops fitting. With more, the search may miss what it would have found in a smaller one: carry a placement that was
 * found to the larger carton with `placementHolds`.
 *
 * The answer is geometry: it says nothing of how well the pieces are protected, and nothing of their weight.
 *
 * @param question - pieces with their wrap on, inside sizes, clearance; whole micrometres
 * @param effort - how hard to look with more than six pieces
 * @returns the answer; the same in whatever order pieces and sides are given
 * @throws RangeError if a side is no whole number above zero, a clearance none from zero, or there is no piece
 * @throws Error if a placement that was found does not hold, which would be a fault of the search
 * @example cartonFit(twoCubesOf6In11, USUAL_EFFORT) // { kind: "does-not-fit", reason: { kind: "two-too-large", ... } }
 */
export function cartonFit(question: FitQuestion, effort: FitEffort): CartonFit {
  const { problem, pieceOf, placement } = fitProblem(question);
  const reason = noFitReason(problem);
  if (reason) return { kind: "does-not-fit", reason: inQuestion(reason, pieceOf) };
  const end = packingSearch(problem, effort);
  switch (end.kind) {
    case "found":
      return { kind: "fits", placement: checked(question, placement(end.placed)) };
    case "none":
      return { kind: "does-not-fit", reason: end.reason };
    case "not-proven":
      return end;
    default:
      return end satisfies never;
  }
}

function checked(question: FitQuestion, found: Placement): Placement {
  const settled = settledPlacement(found, question.clearance.baseUm);
  const faults = placementFaults(question, settled);
  if (faults.length > 0)
    throw new Error(`cartonFit found a placement with faults: ${JSON.stringify(faults)}`);
  return settled;
}

function inQuestion(reason: NoFitReason, pieceOf: readonly number[]): NoFitReason {
  const named = (piece: number): number => pieceOf[piece] ?? piece;
  if (reason.kind === "piece-too-large") return { ...reason, piece: named(reason.piece) };
  if (reason.kind !== "two-too-large") return reason;
  const [first, second] = reason.pieces;
  return { ...reason, pieces: [named(first), named(second)] };
}
