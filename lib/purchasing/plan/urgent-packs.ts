import type { PlanOffer } from "#lib/purchasing/plan/plan-offer";
import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";
import { packsMinor } from "#lib/purchasing/plan/price-tiers";
import { supplyReach } from "#lib/purchasing/plan/supply-reach";

/**
 * Most packs of an offer that this week's order may hold when only the urgent is ordered: what the supply lacks
 * of its wanted stock before an order of the next chance could arrive, in whole packs. Where the urgent lines of
 * a supplier do not reach its least order, its order may be filled up, so the offer is not held back.
 *
 * @param question all of the plan
 * @param offer one of its offers
 * @returns whole packs; Infinity where the offer may fill up an order
 */
export function urgentPacks(question: PlanQuestion, offer: PlanOffer): number {
  const own = packsLacking(question, offer);
  const least = question.suppliers.find(({ id }) => id === offer.supplierId)?.leastOrderMinor ?? 0;
  const goods = question.offers
    .filter(({ supplierId, steps }) => supplierId === offer.supplierId && steps !== null)
    .map((each) => packsMinor(each, packsLacking(question, each)))
    .reduce((sum, minor) => sum + minor, 0);
  return goods > 0 && goods < least ? Number.POSITIVE_INFINITY : own;
}

function packsLacking(question: PlanQuestion, offer: PlanOffer): number {
  const supply = question.supplies.find(({ id }) => id === offer.supplyId);
  if (supply === undefined) return 0;
  const { end } = supplyReach(question, supply);
  const until = nextArrival(question, offer.supplyId);
  const lacking = end.map((units, week) => (week < until ? (supply.wanted[week] ?? 0) - units : 0));
  const packs = Math.ceil(Math.max(0, ...lacking) / offer.unitsPerPack - 1e-9);
  return packs === 0 ? 0 : Math.max(packs, offer.steps?.[0]?.fromPacks ?? 1);
}

/**
 * First week before whose use an order that is not placed this week could arrive.
 *
 * @param question all of the plan
 * @param supplyId the supply
 * @returns number of the week; `weeks` where no later order arrives in time
 */
export function nextArrival(question: PlanQuestion, supplyId: string): number {
  const arrivals = question.offers
    .filter((offer) => offer.supplyId === supplyId && offer.steps !== null)
    .map(({ supplierId, leadWeeks }) => {
      const supplier = question.suppliers.find(({ id }) => id === supplierId);
      const week = supplier?.orderWeeks.indexOf(true, 1) ?? -1;
      return week < 0 ? question.weeks : week + leadWeeks;
    });
  return Math.min(question.weeks, ...arrivals);
}
