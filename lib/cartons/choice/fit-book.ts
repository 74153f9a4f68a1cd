import { type CartonFit, cartonFit } from "#lib/cartons/fit/carton-fit";
import type { FitEffort } from "#lib/cartons/fit/fit-effort";
import type { Clearance, WrappedPiece } from "#lib/cartons/fit/fit-question";
import type { Placement } from "#lib/cartons/fit/placement";
import { placementHolds } from "#lib/cartons/fit/placement-holds";
import { blockSides } from "#lib/cartons/fit/sides";
import type { Block } from "#lib/packing/block";

/** Whether the pieces of the book fit an inside. */
export type FitBook = (inside: Block) => CartonFit;

/**
 * The fits of one load, remembered: a placement that was found is carried to every other carton that it holds in, and where
 * all arrangements of a carton were gone through in vain, no carton within it is searched again.
 *
 * @param asked pieces, clearance and how hard to look
 * @returns a function of the inside; a carton that is "not-proven" may be found to fit later, never the other way round
 * @example const fitIn = fitBook({ pieces, clearance, effort: QUICK_EFFORT });
 *   fitIn(cube10).kind // "fits"
 */
export function fitBook(asked: {
  readonly pieces: readonly WrappedPiece[];
  readonly clearance: Clearance;
  readonly effort: FitEffort;
}): FitBook {
  const { pieces, clearance, effort } = asked;
  const answers = new Map<string, CartonFit>();
  const placements: Placement[] = [];
  const inVain: { readonly inside: Block; readonly fit: CartonFit }[] = [];

  return (inside) => {
    const key = blockSides(inside).join();
    const known = answers.get(key);
    if (known !== undefined && known.kind !== "not-proven") return known;
    const question = { pieces, inside, clearance };
    const carried = placements.find((placement) => placementHolds(question, placement));
    const fit: CartonFit =
      carried === undefined
        ? (known ?? inVain.find((each) => isWithin(inside, each.inside))?.fit ?? cartonFit(question, effort))
        : { kind: "fits", placement: carried };
    answers.set(key, fit);
    if (fit.kind === "fits" && carried === undefined) placements.push(fit.placement);
    if (fit.kind === "does-not-fit" && fit.reason.kind === "all-searched") inVain.push({ inside, fit });
    return fit;
  };
}

function isWithin(inside: Block, larger: Block): boolean {
  const sides = blockSides(larger);
  return blockSides(inside).every((side, axis) => side <= (sides[axis] ?? 0));
}
