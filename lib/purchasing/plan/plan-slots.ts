import type { PlanOffer, PlanPriceStep } from "#lib/purchasing/plan/plan-offer";
import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";
import type { PlanSupplier } from "#lib/purchasing/plan/plan-supplier";
import type { PlanSupply } from "#lib/purchasing/plan/plan-supply";
import { type PriceTier, packsMinor, priceTiers } from "#lib/purchasing/plan/price-tiers";
import { type SupplyReach, supplyReach } from "#lib/purchasing/plan/supply-reach";
import { urgentPacks } from "#lib/purchasing/plan/urgent-packs";

/** One offer in one week in which it may be ordered, and in time to arrive. */
export type PlanSlot = {
  readonly offer: PlanOffer;
  readonly supply: PlanSupply;
  readonly supplier: PlanSupplier;
  readonly week: number;
  readonly arrival: number;
  /** no cheapest plan orders more packs here */
  readonly most: number;
  readonly tiers: readonly PriceTier[];
};

/**
 * Every offer in every week in which a plan could order it, with the most packs that could be of use: what the
 * weeks to come need, what reaches a cheaper step or a supplier's threshold, never above the stock allowed.
 *
 * @param question all of the plan
 * @returns slots, by offer and week; none for offers without a price
 * @throws RangeError when a supply is worth more at the end than it costs, and no most stock holds it back
 */
export function planSlots(question: PlanQuestion): PlanSlot[] {
  const supplies = new Map(question.supplies.map((supply) => [supply.id, supply]));
  const suppliers = new Map(question.suppliers.map((supplier) => [supplier.id, supplier]));
  const reaches = new Map(question.supplies.map((supply) => [supply.id, supplyReach(question, supply)]));
  return question.offers.flatMap((offer) => {
    const supply = supplies.get(offer.supplyId);
    const supplier = suppliers.get(offer.supplierId);
    const reach = reaches.get(offer.supplyId);
    if (offer.steps === null || supply === undefined || supplier === undefined || reach === undefined)
      return [];
    return Array.from({ length: Math.max(0, question.weeks - offer.leadWeeks) }, (_, week) => week)
      .filter((week) => supplier.orderWeeks[week])
      .map((week) => {
        const arrival = week + offer.leadWeeks;
        const isHeldBack = question.aim.kind === "urgent" && week === 0;
        const urgent = isHeldBack ? urgentPacks(question, offer) : Number.POSITIVE_INFINITY;
        const most = Math.min(urgent, mostPacks({ offer, supply, supplier, reach, arrival }));
        return { offer, supply, supplier, week, arrival, most, tiers: priceTiers(offer, most) };
      })
      .filter(({ tiers }) => tiers.length > 0);
  });
}

type Place = Pick<PlanSlot, "offer" | "supply" | "supplier" | "arrival"> & { readonly reach: SupplyReach };

function mostPacks(place: Place): number {
  const { offer, reach, arrival, supply } = place;
  const room = (reach.allowed[arrival] ?? 0) - (reach.least[arrival] ?? 0);
  const allowed = Math.min(offer.mostPacks ?? Number.POSITIVE_INFINITY, wholePacks(room, offer));
  if (allowed <= 0) return 0;
  const slopes = (offer.steps ?? []).map(({ priceMinor }) => priceMinor);
  const isWorthHoarding = Math.min(...slopes) < supply.endValueMinor * offer.unitsPerPack;
  if (isWorthHoarding && allowed === Number.POSITIVE_INFINITY) {
    throw new RangeError(
      `planSlots requires a most stock for supply ${supply.id}: a unit left at the end is worth more than it costs`,
    );
  }
  return isWorthHoarding ? allowed : Math.min(allowed, usefulPacks(place, allowed));
}

const wholePacks = (units: number, offer: PlanOffer): number => Math.floor(units / offer.unitsPerPack + 1e-9);

/**
 * The most packs that an order cannot be cut from without losing something. With all needs of the weeks to come met by
 * the order alone, fewer packs leave nothing short, take less room and cost less to hold, so that a plan with more
 * can be cut, and be no dearer, where fewer packs that still meet the needs
 * - cost no more, less what they are worth at the end, and alone keep the least order and free delivery; or
 * - cost less by at least the delivery, and alone keep the least order; or
 * - have the same goods, as a pack more is for nothing.
 * Cash is spared as well: what a pack is worth at the end is never below 0.
 */
function usefulPacks({ offer, supplier, supply, reach, arrival }: Place, allowed: number): number {
  const needed = Math.max(0, Math.ceil(at(reach.needed, arrival) / offer.unitsPerPack - 1e-9));
  const { first, last } = endSteps(offer);
  const { deliveryMinor } = supplier;
  const least = supplier.leastOrderMinor ?? 0;
  const both = Math.max(least, deliveryMinor > 0 ? (supplier.freeFromMinor ?? 0) : 0);
  const start = Math.max(needed, first.fromPacks);
  // Cheapest so far of the packs that keep both thresholds, and of those that keep the least order and pay delivery.
  let cheapest = Number.POSITIVE_INFINITY;
  const keep = (goods: number, net: number): void => {
    if (goods >= both) cheapest = Math.min(cheapest, net);
    if (goods >= least) cheapest = Math.min(cheapest, net + deliveryMinor);
  };
  if (needed === 0) keep(0, 0);
  let useful = needed === 0 ? 0 : start;
  for (let packs = start; packs <= allowed; packs++) {
    const goods = packsMinor(offer, packs);
    const net = goods - supply.endValueMinor * offer.unitsPerPack * packs;
    const isForNothing = last.priceMinor === 0 && packs > Math.max(start, last.fromPacks);
    const canBeCut = cheapest <= net || isForNothing;
    // From the last step on each pack more costs the same, so that what follows can be cut as well.
    if (canBeCut && packs >= last.fromPacks) break;
    if (!canBeCut) useful = packs;
    keep(goods, net);
  }
  return useful;
}

/** The first and the last price step; without any nothing is for sale. */
function endSteps({ id, steps }: PlanOffer): { readonly first: PlanPriceStep; readonly last: PlanPriceStep } {
  const [first] = steps ?? [];
  const last = steps?.at(-1);
  if (first === undefined || last === undefined) {
    throw new RangeError(`planSlots requires price steps of offer ${id}, got none`);
  }
  return { first, last };
}

const at = (list: readonly number[], week: number): number => list[week] ?? 0;
