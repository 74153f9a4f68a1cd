import { type CandidateCarton, cartonStock } from "#lib/cartons/choice/candidate-carton";
import type { ChoiceRequest } from "#lib/cartons/choice/choice-request";
import { costInCarton } from "#lib/cartons/choice/cost-in-carton";
import { fitBook } from "#lib/cartons/choice/fit-book";
import { type CarriedLoad, carriedLoad } from "#lib/cartons/choice/held-load";
import { spentValue } from "#lib/cartons/choice/priced-carton";
import type { CartonCost } from "#lib/cartons/cost/carton-cost";
import type { Placement } from "#lib/cartons/fit/placement";
import { blockVolume } from "#lib/packing/block";
import { cartonOutside } from "#lib/packing/carton-outside";
import { boxInBox } from "#lib/packing/fill/box-in-box";
import type { CartonRoom } from "#lib/packing/fill/carton-room";

/** A load for an inner carton with its cushion, and the gap asked for all round that carton in the outer one. */
export type DoubleBoxRequest = Pick<
  ChoiceRequest,
  "load" | "clearance" | "candidates" | "terms" | "loadType" | "trust" | "effort"
> & {
  /** micrometres from zero */
  readonly gapUm: number;
};

/** An inner carton in an outer one, both closed with tape; money in 1/10,000 minor unit. */
export type DoubleBoxChoice = {
  readonly inner: {
    readonly carton: CandidateCarton;
    /** materials only: it is not posted by itself */
    readonly cost: CartonCost;
    readonly placement: Placement;
  };
  readonly outer: {
    readonly carton: CandidateCarton;
    /** of the inner carton in it, postage and all */
    readonly cost: CartonCost;
    readonly strength: CarriedLoad;
    /** how the inner carton stands in it */
    readonly room: CartonRoom;
  };
  /** both cartons, the fill of both, both tapings, and the postage */
  readonly totalValue: number;
  /** the total with the prices of cartons that are to be used up taken as spent */
  readonly asSpentValue: number;
};

/**
 * The cheapest double box of cartons that are there. The inner one may be unrated, as it carries nothing but the load; the
 * outer one must carry all of it. The inner carton is taken to keep its size. An estimate: it does not certify that the
 * contents are protected.
 *
 * @param request load, cushion in the inner carton, gap round it, cartons and terms
 * @returns the pair, those with a postage before those without, or null where there is none
 * @throws RangeError if the gap is below zero, or as `cartonCost`, `cartonFit` and `outerCarton`
 * @see boxInBox
 * @example doubleBoxChoice(request)?.outer.carton.id // "cube-12"
 */
export function doubleBoxChoice(request: DoubleBoxRequest): DoubleBoxChoice | null {
  const { load, clearance, effort, loadType, trust, gapUm } = request;
  if (!(gapUm >= 0)) throw new RangeError(`doubleBoxChoice requires a gap from zero, got ${gapUm}`);
  const fitIn = fitBook({ pieces: load.pieces, clearance, effort });
  const there = request.candidates.filter(({ onHand }) => cartonStock(onHand) !== "none");
  const pairs = there
    .flatMap((carton) => {
      const cost = costInCarton(load, carton, { ...request.terms, postage: () => null });
      const fit = fitIn(carton.inside);
      return cost === null || fit.kind !== "fits" ? [] : [{ carton, cost, placement: fit.placement }];
    })
    .flatMap((inner) => pairsOf(inner, there, request))
    .toSorted(byPostageAndTotal);
  for (const pair of pairs) {
    const carried = carriedLoad(pair.outer.carton, pair.outer.cost, { type: loadType, trust });
    if (carried.kind === "carries") return { ...pair, outer: { ...pair.outer, strength: carried.strength } };
  }
  return null;
}

type Pair = Omit<DoubleBoxChoice, "outer"> & { readonly outer: Omit<DoubleBoxChoice["outer"], "strength"> };

function pairsOf(
  inner: DoubleBoxChoice["inner"],
  outers: readonly CandidateCarton[],
  { load, terms, gapUm }: DoubleBoxRequest,
): readonly Pair[] {
  const thisSideUp = load.pieces.some(({ upright }) => upright);
  const { inside, boardUm } = inner.carton;
  const ml = blockVolume(cartonOutside(inside, boardUm));
  return outers.flatMap((carton) => {
    const room = boxInBox({ inside, boardUm }, carton.inside, { gapUm, thisSideUp });
    if (room.kind !== "fits" || carton.id === inner.carton.id) return [];
    const cost = costInCarton({ pieces: [], ml, massMg: inner.cost.massMg }, carton, terms);
    if (cost === null) return [];
    const totalValue = inner.cost.totalValue + cost.totalValue;
    const asSpentValue = totalValue - spentValue(inner.carton) - spentValue(carton);
    return [{ inner, outer: { carton, cost, room }, totalValue, asSpentValue }];
  });
}

function byPostageAndTotal(first: Pair, second: Pair): number {
  const isUnknown = ({ outer }: Pair): number => Number(outer.cost.postageValue === null);
  return (
    isUnknown(first) - isUnknown(second) ||
    first.totalValue - second.totalValue ||
    first.asSpentValue - second.asSpentValue
  );
}
