import { type CostedPlan, costedPlan, type PlanLine, type PlanOrder } from "#lib/purchasing/plan/costed-plan";
import type { PlanChoice } from "#lib/purchasing/plan/plan-choice";
import type { PlanOffer } from "#lib/purchasing/plan/plan-offer";
import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";
import { nextArrival } from "#lib/purchasing/plan/urgent-packs";

/** Why a line is in this week's order. */
export type PlanReason =
  /** without it the supply is below the wanted stock in `belowWantedWeek`, before a later order could arrive */
  | { readonly kind: "needed"; readonly belowWantedWeek: number; readonly belowNothingWeek: number | null }
  /** it is needed only later, and saves a delivery then */
  | { readonly kind: "shares-delivery"; readonly neededWeek: number }
  /** more than is needed now, for the price from so many packs on */
  | { readonly kind: "price-step"; readonly fromPacks: number; readonly priceMinor: number }
  /** with it the order's goods reach the sum from which delivery is free */
  | { readonly kind: "free-delivery"; readonly fromMinor: number; readonly savesMinor: number }
  /** with it the order reaches the least that the supplier takes */
  | { readonly kind: "least-order"; readonly leastMinor: number }
  /** it stands in for another supply */
  | { readonly kind: "substitute"; readonly forSupplyId: string }
  /** what it leaves at the end is worth more than it costs */
  | { readonly kind: "worth-keeping" };

/** A line of this week's orders with its reasons, the weightiest first. */
export type ReasonedLine = { readonly offerId: string; readonly reasons: readonly PlanReason[] };

/**
 * Why each line of this week's orders is there: the plan is looked at again without it.
 *
 * @param question all of the plan
 * @param choice the plan's packs and stand-ins
 * @returns lines of week 0, each with at least one reason
 */
export function planReasons(question: PlanQuestion, choice: PlanChoice): ReasonedLine[] {
  const plan = costedPlan(question, choice);
  return plan.orders
    .filter(({ week }) => week === 0)
    .flatMap((order) =>
      order.lines.flatMap((line) => {
        const offer = question.offers.find(({ id }) => id === line.offerId);
        return offer === undefined
          ? []
          : [{ offerId: line.offerId, reasons: reasonsOf(question, choice, plan, order, line, offer) }];
      }),
    );
}

function reasonsOf(
  question: PlanQuestion,
  choice: PlanChoice,
  plan: CostedPlan,
  order: PlanOrder,
  line: PlanLine,
  offer: PlanOffer,
): PlanReason[] {
  const rest = choice.lines.filter(({ offerId, week }) => offerId !== line.offerId || week !== 0);
  const without = costedPlan(question, { ...choice, lines: rest });
  const index = question.supplies.findIndex(({ id }) => id === offer.supplyId);
  const wanted = question.supplies[index]?.wanted ?? [];
  const end = without.stock[index]?.end ?? [];
  const hasIt = (week: number) => week >= offer.leadWeeks;
  const belowWanted = end.findIndex((units, week) => hasIt(week) && units < (wanted[week] ?? 0) - DUST);
  const belowNothing = end.findIndex((units, week) => hasIt(week) && units < -DUST);
  const later = nextArrival(question, offer.supplyId);
  const isNeeded = belowWanted >= 0 && belowWanted < later;
  const reasons: PlanReason[] = [];
  if (isNeeded) {
    const belowNothingWeek = belowNothing < 0 ? null : belowNothing;
    reasons.push({ kind: "needed", belowWantedWeek: belowWanted, belowNothingWeek });
  }
  const lacking = end.map((units, week) => (week < later && hasIt(week) ? (wanted[week] ?? 0) - units : 0));
  const neededPacks = Math.ceil(Math.max(0, ...lacking) / offer.unitsPerPack - DUST);
  reasons.push(...stepReason(offer, line.packs, neededPacks));
  if (!isNeeded || line.packs > neededPacks) {
    reasons.push(...orderReasons(question, order, line));
    if (!isNeeded && belowWanted >= 0) reasons.push({ kind: "shares-delivery", neededWeek: belowWanted });
  }
  const lends = plan.standIns.filter(
    ({ fromSupplyId, units }) => fromSupplyId === offer.supplyId && units > DUST,
  );
  for (const forSupplyId of new Set(lends.map(({ toSupplyId }) => toSupplyId))) {
    reasons.push({ kind: "substitute", forSupplyId });
  }
  return reasons.length > 0 ? reasons : [{ kind: "worth-keeping" }];
}

function stepReason(offer: PlanOffer, packs: number, neededPacks: number): PlanReason[] {
  const reached = (offer.steps ?? []).findLast(({ fromPacks }, index) => index > 0 && fromPacks <= packs);
  if (reached === undefined || neededPacks >= reached.fromPacks) return [];
  return [{ kind: "price-step", fromPacks: reached.fromPacks, priceMinor: reached.priceMinor }];
}

function orderReasons(question: PlanQuestion, order: PlanOrder, line: PlanLine): PlanReason[] {
  const supplier = question.suppliers.find(({ id }) => id === order.supplierId);
  if (supplier === undefined) return [];
  const others = order.goodsMinor - line.goodsMinor;
  const { freeFromMinor, leastOrderMinor, deliveryMinor } = supplier;
  const reasons: PlanReason[] = [];
  const isReaching = (sum: number | null): sum is number =>
    sum !== null && others < sum && order.goodsMinor >= sum && others > 0;
  if (isReaching(freeFromMinor) && deliveryMinor > 0) {
    reasons.push({ kind: "free-delivery", fromMinor: freeFromMinor, savesMinor: deliveryMinor });
  }
  if (isReaching(leastOrderMinor)) reasons.push({ kind: "least-order", leastMinor: leastOrderMinor });
  return reasons;
}

const DUST = 1e-6;
