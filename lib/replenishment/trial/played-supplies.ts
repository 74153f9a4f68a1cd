import type { SubjectForecast } from "#lib/forecast/shop/subject-forecast";
import type { UseSource } from "#lib/replenishment/simulation/shop-use";
import type { CheckOffer } from "#lib/replenishment/suggested-packs";
import type { SupplyOutlookInput } from "#lib/replenishment/supply-outlook-input";
import { pastForecast, recordedUse } from "#lib/replenishment/trial/past-use";
import type { TrialShop, TrialSpan } from "#lib/replenishment/trial/trial-shop";
import { unitsOf } from "#lib/units/amount";
import { type Day, daysBetween } from "#lib/units/day";

/** A supply that takes part in a trial. Amounts in use units. */
export type PlayedSupply = {
  readonly supplyId: string;
  readonly name: string;
  readonly goal: SupplyOutlookInput["goal"];
  /** with a price, at least one */
  readonly offers: readonly (CheckOffer & { readonly priceMinor: number })[];
  readonly source: UseSource;
  /** what is known of the coming use on a day */
  readonly forecastOn: (day: Day) => SubjectForecast;
  /** stock at the start; null where it is not known, as in the past */
  readonly startStock: number | null;
  readonly arrivals: readonly { readonly dueDay: number; readonly amount: number }[];
};

/** A supply that takes no part, and why. */
export type LeftOut = {
  readonly name: string;
  readonly reason: "not-used" | "not-counted" | "below-zero" | "no-price";
};

/**
 * The supplies that a trial can play. Those whose stock is not known stay out, as does what is not used or has no price.
 *
 * @param shop the shop
 * @param span whose weeks are played
 * @returns what is played, and what is left out
 */
export function playedSupplies(
  shop: TrialShop,
  span: TrialSpan,
): { played: PlayedSupply[]; leftOut: LeftOut[] } {
  const played: PlayedSupply[] = [];
  const leftOut: LeftOut[] = [];
  for (const supply of shop.supplies) {
    const { name, forecast } = supply;
    const offers = supply.offers.flatMap((offer) =>
      offer.priceMinor === null ? [] : [{ ...offer, priceMinor: offer.priceMinor }],
    );
    const reason = reasonToLeaveOut(supply, { span, isPriced: offers.length > 0 });
    if (forecast === null || reason !== null) leftOut.push({ name, reason: reason ?? "not-used" });
    else played.push(playedSupply({ ...supply, forecast, offers }, shop, span));
  }
  return { played, leftOut };
}

function reasonToLeaveOut(
  { forecast, onHand }: SupplyOutlookInput,
  { span, isPriced }: { readonly span: TrialSpan; readonly isPriced: boolean },
): LeftOut["reason"] | null {
  if (forecast === null) return "not-used";
  if (!isPriced) return "no-price";
  if (span.kind === "past") return null;
  if (onHand === null) return "not-counted";
  return onHand < 0 ? "below-zero" : null;
}

function playedSupply(
  supply: SupplyOutlookInput & {
    readonly forecast: SubjectForecast;
    readonly offers: PlayedSupply["offers"];
  },
  { today, calendar }: TrialShop,
  span: TrialSpan,
): PlayedSupply {
  const { supplyId, name, goal, offers, forecast, useByDay, onHand, onOrder } = supply;
  const plain = { supplyId, name, goal, offers };
  if (span.kind === "past") {
    return {
      ...plain,
      startStock: null,
      arrivals: [],
      source: { kind: "replayed", perDay: recordedUse(useByDay, span) },
      forecastOn: pastForecast(forecast, useByDay, calendar),
    };
  }
  return {
    ...plain,
    source: { kind: "drawn", path: forecast.path, spread: forecast.spread },
    forecastOn: () => forecast,
    startStock: onHand === null ? null : unitsOf(onHand),
    // What is late comes tomorrow at the soonest.
    arrivals: onOrder.map(({ amount, expectedOn }) => ({
      dueDay: Math.max(1, daysBetween(today, expectedOn)),
      amount: unitsOf(amount),
    })),
  };
}
