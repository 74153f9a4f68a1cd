import type { ChoiceRequest } from "#lib/cartons/choice/choice-request";
import { costInCarton } from "#lib/cartons/choice/cost-in-carton";
import { cutCarton } from "#lib/cartons/choice/cut-carton";
import type { OfferedCarton } from "#lib/cartons/cost/packed-load";
import { cartonFit } from "#lib/cartons/fit/carton-fit";
import type { WrappedPiece } from "#lib/cartons/fit/fit-question";
import type { Placement } from "#lib/cartons/fit/placement";
import { blockSides } from "#lib/cartons/fit/sides";
import { smallestHeight } from "#lib/cartons/fit/smallest-height";

/** What a lower height is asked by. */
export type HeightRequest = Pick<
  ChoiceRequest,
  "load" | "clearance" | "terms" | "cut" | "minuteValue" | "effort"
>;

/** The lowest inside height of whole steps that a load was found to fit. */
export type LowestCut = {
  readonly heightUm: number;
  /** "exact": no lower step would do; "bestFound": a lower one might */
  readonly least: "exact" | "bestFound";
  readonly placement: Placement;
};

/**
 * The lowest inside height that a carton can be cut to, in whole steps. The greatest height that would still be of use is
 * asked first: mostly the answer is no, and no other is searched.
 *
 * @param carton uncut
 * @param request load, clearance, terms and the step
 * @param under what the load must cost less than in it, 1/10,000 minor unit, minutes and all
 * @returns the height with a placement, or null where none below the carton's own is of use
 * @throws RangeError as `cartonFit`
 * @see smallestHeight; postage is taken never to rise where a parcel becomes lighter and lower
 */
export function lowestCut(carton: OfferedCarton, request: HeightRequest, under: number): LowestCut | null {
  const { load, clearance, cut, effort } = request;
  const usefulUm = greatestUseful(carton, request, under);
  if (usefulUm === null) return null;
  const { pieces } = load;
  const useful = cartonFit({ pieces, clearance, inside: { ...carton.inside, heightUm: usefulUm } }, effort);
  if (useful.kind !== "fits") return null;
  const smallest = smallestHeight({ pieces, clearance, base: carton.inside }, effort);
  if (smallest.kind === "at-no-height") throw new Error("lowestCut found a placement at no height");
  const heightUm = Math.ceil(smallest.heightUm / cut.stepUm) * cut.stepUm;
  if (heightUm > usefulUm) return { heightUm: usefulUm, least: "bestFound", placement: useful.placement };
  const least = smallest.kind === "exact" ? "exact" : "bestFound";
  return { heightUm, least, placement: smallest.placement };
}

/**
 * The least that a load can cost in a carton cut down, by its highest piece and its volume: without a search.
 *
 * @param carton uncut
 * @param request load, clearance, terms, minutes and the step
 * @returns 1/10,000 minor unit, minutes and all; null where the carton could not be cut
 */
export function leastCutValue(carton: OfferedCarton, request: HeightRequest): number | null {
  const steps = stepsBelow(carton, request);
  return steps === null ? null : valueAt(carton, request, steps.least);
}

function greatestUseful(carton: OfferedCarton, request: HeightRequest, under: number): number | null {
  const steps = stepsBelow(carton, request);
  if (steps === null) return null;
  const isUseful = (step: number): boolean => valueAt(carton, request, step) < under;
  if (!isUseful(steps.least)) return null;
  let useful = steps.least;
  let useless = steps.most + 1;
  while (useless - useful > 1) {
    const middle = (useful + useless) >> 1;
    if (isUseful(middle)) useful = middle;
    else useless = middle;
  }
  return useful * request.cut.stepUm;
}

/** Heights that come into question, in steps: not under the highest piece or the volume, and under the carton's own. */
function stepsBelow({ inside }: OfferedCarton, { load, clearance, cut }: HeightRequest) {
  const plan = (inside.lengthUm - 2 * clearance.wallsUm) * (inside.widthUm - 2 * clearance.wallsUm);
  if (Math.min(inside.lengthUm, inside.widthUm) <= 2 * clearance.wallsUm) return null;
  const volume = load.pieces.reduce((sum, { block }) => {
    const [length, width, height] = blockSides(block);
    return sum + length * width * height;
  }, 0);
  const highest = Math.max(...load.pieces.map(lowestSide));
  const leastUm = clearance.baseUm + clearance.topUm + Math.max(highest, Math.floor(volume / plan));
  const least = Math.ceil(leastUm / cut.stepUm);
  const most = Math.ceil(inside.heightUm / cut.stepUm) - 1;
  return least > most ? null : { least, most };
}

function valueAt(carton: OfferedCarton, request: HeightRequest, step: number): number {
  const { load, terms, cut, minuteValue } = request;
  const cost = costInCarton(load, cutCarton(carton, step * cut.stepUm), terms);
  return cost === null ? Number.POSITIVE_INFINITY : cost.totalValue + cut.minutes * (minuteValue ?? 0);
}

const lowestSide = ({ block, upright }: WrappedPiece): number =>
  upright ? block.heightUm : Math.min(...blockSides(block));
