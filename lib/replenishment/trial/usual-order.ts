import type { ClosedCalendar } from "#lib/forecast/open-days";
import { nextOpenDay } from "#lib/forecast/open-days";
import { expectedUse } from "#lib/forecast/use-path";
import { bestOffer } from "#lib/replenishment/best-offer";
import { arrivalChances, usualArrival } from "#lib/replenishment/lead-time/arrival-chances";
import type { SupplierDelivery } from "#lib/replenishment/lead-time/supplier-delivery";
import type { PlayedSupply } from "#lib/replenishment/trial/played-supplies";
import type { TrialTerms } from "#lib/replenishment/trial/trial-shop";
import { unitsOf } from "#lib/units/amount";
import { addDays, type Day } from "#lib/units/day";

const DAYS_A_WEEK = 7;

/** The offer that a supply is ordered by, and the packs of an order that goes out at the reorder point. */
export type UsualOrder = { readonly offer: PlayedSupply["offers"][number]; readonly packs: number };

/**
 * What an order on a day should last for beyond the reorder point: the cover weeks that begin when an order of the next
 * check would come, as the weekly check reckons.
 *
 * @param supply its forecast
 * @param question the day, the supplier, the terms and the closed days
 * @returns the end of the protection interval, and the expected use in the cover weeks from there, in use units
 */
export function coverOn(
  supply: Pick<PlayedSupply, "forecastOn">,
  question: {
    readonly day: Day;
    readonly delivery: SupplierDelivery;
    readonly terms: TrialTerms;
    readonly calendar: ClosedCalendar;
  },
): { until: Day; covered: number } {
  const { day, delivery, terms, calendar } = question;
  const nextCheck = nextOpenDay(addDays(day, terms.reviewDays), calendar);
  const until = usualArrival(arrivalChances(nextCheck, delivery, calendar));
  const end = addDays(until, terms.coverWeeks * DAYS_A_WEEK);
  return { until, covered: expectedUse(supply.forecastOn(day).path, { from: until, until: end }, calendar) };
}

/**
 * The best offer for orders of a usual size.
 *
 * @param supply with its offers
 * @param question the first day, the terms and the closed days
 * @returns the offer and the packs of such an order, from 1
 * @throws RangeError when the supply has no offer
 */
export function usualOrder(
  supply: PlayedSupply,
  question: { readonly day: Day; readonly terms: TrialTerms; readonly calendar: ClosedCalendar },
): UsualOrder {
  const packed = supply.offers.map((offer) => {
    const { covered } = coverOn(supply, { ...question, delivery: offer.delivery });
    return { offer, packs: Math.max(1, Math.ceil(covered / unitsOf(offer.packAmount))) };
  });
  const best = bestOffer(packed);
  const found = packed.find(({ offer }) => offer.offerId === best?.offer.offerId);
  if (found === undefined)
    throw new RangeError(`usualOrder requires an offer of ${supply.supplyId}, got none`);
  return found;
}
