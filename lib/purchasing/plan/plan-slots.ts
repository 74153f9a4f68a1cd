import type { PlanOffer } from "#lib/purchasing/plan/plan-offer";
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
  const room = Math.floor((reach.allowed[arrival] ?? 0) - (reach.least[arrival] ?? 0) + 1e-9);
  const allowed = Math.min(offer.mostPacks ?? Number.POSITIVE_INFINITY, wholePacks(room, offer));
  if (allowed <= 0) return 0;
  const needed = Math.max(0, Math.ceil((reach.needed[arrival] ?? 0) / offer.unitsPerPack - 1e-9));
  const useful = Math.max(needed, stepPacks(place, needed), thresholdPacks(place, needed));
  const slopes = (offer.steps ?? []).map(({ priceMinor }) => priceMinor);
  const isWorthHoarding = Math.min(...slopes) < supply.endValueMinor * offer.unitsPerPack;
  if (isWorthHoarding && allowed === Number.POSITIVE_INFINITY) {
    throw new RangeError(
      `planSlots requires a most stock for supply ${supply.id}: a unit left at the end is worth more than it costs`,
    );
  }
  return isWorthHoarding ? allowed : Math.min(allowed, useful);
}

const wholePacks = (units: number, offer: PlanOffer): number => Math.floor(units / offer.unitsPerPack + 1e-9);

/** Beyond the need a cheaper step is of use where its fewest packs cost no more than those needed. */
function stepPacks({ offer, supply }: Place, needed: number): number {
  const net = (packs: number) => packsMinor(offer, packs) - supply.endValueMinor * offer.unitsPerPack * packs;
  const first = offer.steps?.[0]?.fromPacks ?? 1;
  const least = Math.max(needed, first);
  const later = (offer.steps ?? []).filter(
    ({ fromPacks }) => fromPacks > least && net(fromPacks) <= net(least),
  );
  return Math.max(first, ...later.map(({ fromPacks }) => fromPacks));
}

/** Beyond the need packs are of use until the supplier takes the order, or delivers it for nothing. */
function thresholdPacks({ offer, supplier, supply }: Place, needed: number): number {
  const least = supplier.leastOrderMinor ?? 0;
  const free = supplier.freeFromMinor ?? 0;
  const steps = offer.steps ?? [];
  if (Math.min(...steps.map(({ priceMinor }) => priceMinor)) <= 0) return needed;
  const net = (count: number) => packsMinor(offer, count) - supply.endValueMinor * offer.unitsPerPack * count;
  let packs = Math.max(needed, steps[0]?.fromPacks ?? 1);
  const begun = net(packs);
  const isOfUse = (): boolean => {
    const goods = packsMinor(offer, packs);
    if (goods < least) return true;
    // Beyond the last step each pack more loses the same, so one look ahead is enough.
    const isSaving =
      net(packs + 1) - begun < supplier.deliveryMinor || packs < (steps.at(-1)?.fromPacks ?? 1);
    return goods < free && isSaving;
  };
  while (isOfUse()) packs++;
  return packs;
}
