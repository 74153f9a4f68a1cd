import { type CandidateCarton, isToUseUp } from "#lib/cartons/choice/candidate-carton";
import { costInCarton } from "#lib/cartons/choice/cost-in-carton";
import type { CartonCost, CartonTerms } from "#lib/cartons/cost/carton-cost";
import type { PackedLoad } from "#lib/cartons/cost/packed-load";

/** A carton with what the load costs in it, in 1/10,000 minor unit. */
export type PricedCarton = {
  readonly carton: CandidateCarton;
  readonly cost: CartonCost;
  /** the total less the carton's own price where it is one to use up: that money is spent */
  readonly asSpentValue: number;
};

/**
 * The cartons that have room enough for a load, with its cost in each.
 *
 * @param load what goes in
 * @param cartons candidates
 * @param terms fill, tape, bulge and postage
 * @returns priced cartons in the order given; those with too little room are left out
 * @throws RangeError as `cartonCost`
 */
export function pricedCartons(
  load: PackedLoad,
  cartons: readonly CandidateCarton[],
  terms: CartonTerms,
): readonly PricedCarton[] {
  return cartons.flatMap((carton) => {
    const cost = costInCarton(load, carton, terms);
    return cost === null ? [] : [{ carton, cost, asSpentValue: cost.totalValue - spentValue(carton) }];
  });
}

/**
 * What of a carton's price counts as spent: all of it where it is one to use up, else nothing.
 *
 * @param carton price, class and mark
 * @returns 1/10,000 minor unit
 */
export function spentValue(carton: CandidateCarton): number {
  return isToUseUp(carton) ? carton.value : 0;
}

/**
 * Cheapest first. Those without a postage come last, as a total without it is of another kind; among equals one to use up,
 * then a saved one.
 */
export function byTotal(first: PricedCarton, second: PricedCarton): number {
  return (
    Number(hasPostage(second)) - Number(hasPostage(first)) ||
    first.cost.totalValue - second.cost.totalValue ||
    byKind(first.carton, second.carton)
  );
}

/** Cheapest first, the price of what is to be used up taken as spent; else as `byTotal`. */
export function byAsSpent(first: PricedCarton, second: PricedCarton): number {
  return (
    Number(hasPostage(second)) - Number(hasPostage(first)) ||
    first.asSpentValue - second.asSpentValue ||
    byTotal(first, second)
  );
}

/**
 * Whether a postage is known for the load in this carton.
 *
 * @param priced carton with its cost
 */
export function hasPostage({ cost }: PricedCarton): boolean {
  return cost.postageValue !== null;
}

function byKind(first: CandidateCarton, second: CandidateCarton): number {
  const saved = Number(second.isSaved) - Number(first.isSaved);
  const toUseUp = Number(isToUseUp(second)) - Number(isToUseUp(first));
  return toUseUp || saved || textOrder(first.id, second.id);
}

function textOrder(first: string, second: string): number {
  if (first === second) return 0;
  return first < second ? -1 : 1;
}
