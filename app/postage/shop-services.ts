import { holdsOn } from "#lib/postage/card-on";
import type { Day } from "#lib/units/day";
import type { ReadRateCard } from "#prisma/records/rate-cards";

/** The cards of one service, as of a day. */
export type ShopService = {
  readonly service: string;
  readonly holding: ReadRateCard | null;
  /** cards that begin later, the soonest first */
  readonly coming: readonly ReadRateCard[];
  /** cards that have run out, the latest first */
  readonly past: readonly ReadRateCard[];
};

/**
 * The shop's services.
 *
 * @param cards cards in use, in the shop's order
 * @param today the shop's day
 * @returns the main service first
 */
export function shopServices(cards: readonly ReadRateCard[], today: Day): ShopService[] {
  const services = [...new Set(cards.map(({ service }) => service))];
  return services.map((service) => {
    const own = cards.filter((card) => card.service === service);
    const byStart = own.toSorted((a, b) => (a.validFrom < b.validFrom ? -1 : 1));
    return {
      service,
      holding: own.find((card) => holdsOn(card, today)) ?? null,
      coming: byStart.filter(({ validFrom }) => validFrom > today),
      past: byStart.filter(({ validTo }) => validTo !== null && validTo < today).toReversed(),
    };
  });
}
