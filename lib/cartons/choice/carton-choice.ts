import {
  type CandidateCarton,
  type CartonStock,
  cartonStock,
  isToUseUp,
} from "#lib/cartons/choice/candidate-carton";
import type { CutDown } from "#lib/cartons/choice/cut-down";
import type { CarriedLoad, HeldLoad } from "#lib/cartons/choice/held-load";
import { type PricedCarton, spentValue } from "#lib/cartons/choice/priced-carton";
import type { CartonCost } from "#lib/cartons/cost/carton-cost";
import type { Placement } from "#lib/cartons/fit/placement";

/** Money in 1/10,000 minor unit: all counted, and with the price of a carton that is to be used up taken as spent. */
export type BothValues = { readonly value: number; readonly asSpentValue: number };

/** What both answers have. */
type Offered = {
  readonly carton: CandidateCarton;
  readonly stock: CartonStock;
  readonly isToUseUp: boolean;
  /** of the load in the carton as it is, uncut */
  readonly cost: CartonCost;
  /** what the load costs as offered; minutes of cutting are in it where the seller counts them */
  readonly total: BothValues;
  /** what it costs more than the cheapest, below zero where it saves; null for the cheapest, and where there is none */
  readonly more: BothValues | null;
};

/** A carton taken as it is. */
export type WholeChoice = Offered & {
  /** cheapest of what is there; cheapest of what is to be used up; one that is not there */
  readonly why: "cheapest" | "toUseUp" | "notOnHand";
  readonly placement: Placement;
  readonly strength: CarriedLoad;
  /** what it saves to cut this carton down; null where that is nothing */
  readonly cut: CutDown | null;
};

/** A larger carton cut down; placement and strength are those of the cut. */
export type CutChoice = Offered & { readonly why: "cutDown"; readonly cut: CutDown };

/** One answer to which carton to take. */
export type CartonChoice = WholeChoice | CutChoice;

/**
 * An answer for a carton taken as it is.
 *
 * @param why it is offered
 * @param held the carton that holds the load
 * @param cheapest what it is held against; null for the cheapest itself
 * @param cut what cutting it down would save
 */
export function wholeChoice(
  why: WholeChoice["why"],
  held: HeldLoad,
  cheapest: PricedCarton | null,
  cut: CutDown | null,
): WholeChoice {
  const { placement, strength } = held;
  return { why, ...offered(held, held.cost.totalValue, cheapest), placement, strength, cut };
}

/**
 * An answer for a carton cut down.
 *
 * @param priced the carton uncut
 * @param cut how it is cut
 * @param cheapest what it is held against; null where nothing that is there holds the load uncut
 */
export function cutChoice(priced: PricedCarton, cut: CutDown, cheapest: PricedCarton | null): CutChoice {
  return { why: "cutDown", ...offered(priced, cut.netValue, cheapest), cut };
}

/** What an answer must be under to be better, in one of the two ways of counting. */
export type ToBeat = BothValues & {
  /** whether it counts with postage, so that what is held against it must */
  readonly hasPostage: boolean;
};

/**
 * What some answers are to be beaten by: the least of them, their own cuts counted in; anything beats none.
 *
 * @param answers any number, all with a postage known or all without
 */
export function toBeat(answers: readonly WholeChoice[]): ToBeat {
  const least = answers.map(({ cut, cost, carton }) => {
    const value = Math.min(cost.totalValue, cut?.netValue ?? Number.POSITIVE_INFINITY);
    return { value, asSpentValue: value - spentValue(carton) };
  });
  return {
    value: Math.min(...least.map(({ value }) => value)),
    asSpentValue: Math.min(...least.map(({ asSpentValue }) => asSpentValue)),
    hasPostage: answers.some(({ cost }) => cost.postageValue !== null),
  };
}

function offered({ carton, cost }: PricedCarton, value: number, cheapest: PricedCarton | null): Offered {
  const total = { value, asSpentValue: value - spentValue(carton) };
  const more = cheapest && {
    value: total.value - cheapest.cost.totalValue,
    asSpentValue: total.asSpentValue - cheapest.asSpentValue,
  };
  return { carton, stock: cartonStock(carton.onHand), isToUseUp: isToUseUp(carton), cost, total, more };
}
