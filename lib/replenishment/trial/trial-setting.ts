import { arrivalChances } from "#lib/replenishment/lead-time/arrival-chances";
import { packPriceSteps } from "#lib/replenishment/order-quantity/pack-price-steps";
import { goodsCost } from "#lib/replenishment/order-quantity/price-steps";
import type {
  LeadTimes,
  ShopOffer,
  ShopSetting,
  ShopSupply,
} from "#lib/replenishment/simulation/shop-setting";
import { checkLevels, type SupplyLevels } from "#lib/replenishment/trial/check-levels";
import { checkLevelsPolicy } from "#lib/replenishment/trial/check-levels-policy";
import type { PlayedSupply } from "#lib/replenishment/trial/played-supplies";
import type { TrialShop, TrialSpan, TrialTerms } from "#lib/replenishment/trial/trial-shop";
import { type UsualOrder, usualOrder } from "#lib/replenishment/trial/usual-order";
import { unitsOf } from "#lib/units/amount";
import { addDays, daysBetween } from "#lib/units/day";

const ML_A_LITRE = 1_000;

/** A supply with how it is ordered under some terms. */
export type ReadySupply = {
  readonly supply: PlayedSupply;
  readonly order: UsualOrder;
  readonly levels: SupplyLevels;
};

/**
 * How a supply is ordered under some terms: the offer, and the levels of each check.
 *
 * @param supply what is known of it
 * @param question the terms, the span and the shop
 * @throws RangeError when a term is out of range
 */
export function readySupply(
  supply: PlayedSupply,
  question: { readonly terms: TrialTerms; readonly span: TrialSpan; readonly shop: TrialShop },
): ReadySupply {
  const { terms, span, shop } = question;
  const { calendar } = shop;
  const order = usualOrder(supply, { day: span.firstDay, terms, calendar });
  return { supply, order, levels: checkLevels(supply, { order, terms, span, calendar }) };
}

/**
 * The stock that a trial begins with, and what it is worth, the same for both settings: at the price and in the pack of
 * the present terms. Where the stock is not known, as in the past, half an order lies above the reorder point.
 *
 * @param ready a supply under the present terms
 * @returns the supply as the simulation begins with it
 */
export function startingSupply({ supply, order, levels }: ReadySupply): ShopSupply {
  const { offer, packs } = order;
  const [first] = levels.checks;
  const units = unitsOf(offer.packAmount);
  return {
    supplyId: supply.supplyId,
    startStock: supply.startStock ?? ((first?.reorderPoint ?? 0) + (first?.orderUpTo ?? 0)) / 2,
    arrivals: supply.arrivals,
    unitValue: goodsCost(packPriceSteps(offer), packs) / (packs * units),
    litresPerUnit: (offer.volumeMl ?? 0) / ML_A_LITRE / units,
  };
}

/**
 * A shop that orders as the weekly check says under some terms. Use that finds no stock waits for the delivery, so that
 * whatever is ordered, the same is used in the end.
 *
 * @param ready its supplies under these terms
 * @param question the stock it begins with, the terms, the span and the shop
 * @returns the setting, its first check on the first day
 */
export function trialSetting(
  ready: readonly ReadySupply[],
  question: {
    readonly supplies: readonly ShopSupply[];
    readonly terms: TrialTerms;
    readonly span: TrialSpan;
    readonly shop: TrialShop;
  },
): ShopSetting {
  const { supplies, terms, span, shop } = question;
  const { reviewDays } = terms;
  const suppliers = shop.suppliers.map((supplier) => ({
    ...supplier,
    leadTimes: leadTimesFrom(supplier.supplierId, { span, shop }),
  }));
  const rules = ready.map(({ supply, order: { offer }, levels }) => {
    const own: ShopOffer = {
      offerId: offer.offerId,
      supplyId: supply.supplyId,
      supplierId: offer.supplierId,
      packAmount: unitsOf(offer.packAmount),
      prices: packPriceSteps(offer),
    };
    return { offer: own, checks: levels.checks };
  });
  return {
    supplies,
    suppliers,
    offers: rules.map(({ offer }) => offer),
    reviewDays,
    firstCheck: 0,
    unmet: "met-later",
    countedFrom: 0,
    policy: checkLevelsPolicy(rules, { reviewDays, suppliers }),
  };
}

/** By the day of the order, reckoned once each. */
function leadTimesFrom(
  supplierId: string,
  { span, shop }: { readonly span: TrialSpan; readonly shop: TrialShop },
): (day: number) => LeadTimes {
  const offers = shop.supplies.flatMap((supply) => supply.offers);
  const delivery = offers.find((offer) => offer.supplierId === supplierId)?.delivery;
  if (delivery === undefined) {
    throw new RangeError(`trialSetting requires suppliers of an offer, got ${supplierId}`);
  }
  const known = new Map<number, LeadTimes>();
  return (day) => {
    const orderedOn = addDays(span.firstDay, day);
    const found =
      known.get(day) ??
      arrivalChances(orderedOn, delivery, shop.calendar).map((arrival) => ({
        days: daysBetween(orderedOn, arrival.day),
        chance: arrival.chance,
      }));
    known.set(day, found);
    return found;
  };
}
