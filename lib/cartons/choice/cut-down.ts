import type { ChoiceRequest } from "#lib/cartons/choice/choice-request";
import { costInCarton } from "#lib/cartons/choice/cost-in-carton";
import { cutCarton } from "#lib/cartons/choice/cut-carton";
import { type CarriedLoad, carriedLoad } from "#lib/cartons/choice/held-load";
import { lowestCut } from "#lib/cartons/choice/lowest-cut";
import type { PricedCarton } from "#lib/cartons/choice/priced-carton";
import type { CartonCost } from "#lib/cartons/cost/carton-cost";
import type { Placement } from "#lib/cartons/fit/placement";

/** What is asked of a carton that could be cut down. */
export type CutRequest = Pick<
  ChoiceRequest,
  "load" | "clearance" | "terms" | "cut" | "minuteValue" | "effort" | "loadType" | "trust"
>;

/** Flaps of a carton cut down, in micrometres: they meet once each is trimmed back to half the width. */
export type CutFlaps = { readonly meetsUm: number; readonly trimUm: number };

/**
 * A carton cut down to a lower inside height; money in 1/10,000 minor unit. It holds for a slotted carton whose flaps met
 * before. The minutes are a setting and a guess.
 */
export type CutDown = {
  readonly heightUm: number;
  /** "exact": no lower step would do; "bestFound": a lower one might */
  readonly least: "exact" | "bestFound";
  readonly flaps: CutFlaps;
  readonly placement: Placement;
  readonly cost: CartonCost;
  readonly strength: CarriedLoad;
  readonly boardSavedMg: number;
  readonly fillSavedUnits: number;
  readonly fillSavedValue: number;
  /** null where no postage is known for one of the two */
  readonly postageSavedValue: number | null;
  readonly minutes: number;
  /** null where the seller does not count minutes: they are not in `netValue` then */
  readonly minutesValue: number | null;
  /** what the load costs in it, minutes and all */
  readonly netValue: number;
  /** against the same carton uncut, of what is known for both; above zero */
  readonly savesValue: number;
};

/**
 * A carton cut down to the least height that the load and its clearance need: the four corners slit, the walls scored anew,
 * folded, and the flaps trimmed. Each flap gains what the wall loses and is trimmed by as much, so it meets its fellow as
 * before; untrimmed it would lie over it and weigh what it did.
 *
 * @param priced the carton uncut, with the load's cost in it
 * @param request load, clearance, terms, minutes and what they cost
 * @param under what it must cost less than to be of use, 1/10,000 minor unit; spares searches
 * @returns the cut, or null where the carton is no higher than needed, would not carry the load, or nothing is saved
 * @throws RangeError as `cartonFit` and `outerCarton`
 * @see how-to pages on cutting cartons down; the minutes are from memory
 * @example cutDown(pricedCube12, request)?.heightUm // 215000 for an 8 in cube with a quarter of an inch over and under it
 */
export function cutDown(
  priced: PricedCarton,
  request: CutRequest,
  under = Number.POSITIVE_INFINITY,
): CutDown | null {
  const { carton, cost: uncut } = priced;
  const { load, terms, cut, minuteValue } = request;
  const { lengthUm, widthUm, heightUm: insideUm } = carton.inside;
  const isUncutSent = uncut.postageValue !== null;
  const lowest = lowestCut(carton, request, isUncutSent ? Math.min(under, uncut.totalValue) : under);
  if (lowest === null) return null;
  const { heightUm, placement } = lowest;
  const lower = cutCarton(carton, heightUm);
  const cost = costInCarton(load, lower, terms);
  if (cost === null || (cost.postageValue === null && isUncutSent)) return null;
  const carried = carriedLoad(carton, cost, { type: request.loadType, trust: request.trust });
  if (carried.kind !== "carries") return null;
  const minutesValue = minuteValue === null ? null : cut.minutes * minuteValue;
  const saved = savings(uncut, cost, minutesValue ?? 0);
  if (!(saved.savesValue > 0)) return null;
  return {
    heightUm,
    least: lowest.least,
    flaps: { meetsUm: Math.min(lengthUm, widthUm) / 2, trimUm: insideUm - heightUm },
    placement,
    cost,
    strength: carried.strength,
    boardSavedMg: carton.massMg - lower.massMg,
    ...saved,
    minutes: cut.minutes,
    minutesValue,
    netValue: cost.totalValue + (minutesValue ?? 0),
  };
}

function savings(uncut: CartonCost, cost: CartonCost, minutesValue: number) {
  const isSent = uncut.postageValue !== null && cost.postageValue !== null;
  const postageSavedValue = isSent ? (uncut.postageValue ?? 0) - (cost.postageValue ?? 0) : null;
  const fillSavedValue = uncut.fillValue - cost.fillValue;
  return {
    fillSavedUnits: uncut.fillUnits - cost.fillUnits,
    fillSavedValue,
    postageSavedValue,
    savesValue: fillSavedValue + (postageSavedValue ?? 0) - minutesValue,
  };
}
