import type { RateCard } from "#lib/postage/rate-card";
import { type Day, maxDay, minDay } from "#lib/units/day";

/** The card that holds on a day; or a hole between cards, or several that claim the day. */
export type CardOnDay =
  | { readonly kind: "card"; readonly card: RateCard }
  /** `endedOn`: the last day of the latest card before; `startsOn`: the first day of the next one; null if there is none */
  | { readonly kind: "hole"; readonly endedOn: Day | null; readonly startsOn: Day | null }
  | { readonly kind: "overlap"; readonly cards: readonly RateCard[] };

/**
 * Whether a card holds on a day; both its first and its last day count.
 *
 * @param card with its days
 * @param shipDay day on which the parcel is handed over
 * @example holdsOn({ validFrom: day("2026-07-12"), validTo: null }, day("2026-07-11")) // false
 */
export function holdsOn(card: Pick<RateCard, "validFrom" | "validTo">, shipDay: Day): boolean {
  return card.validFrom <= shipDay && (card.validTo === null || shipDay <= card.validTo);
}

/**
 * Picks a service's card for a day. Where none or several hold, that is told; nothing is guessed.
 *
 * @param cards of all services and days
 * @param service as the cards name it
 * @param shipDay day on which the parcel is handed over
 */
export function cardOn(cards: readonly RateCard[], service: string, shipDay: Day): CardOnDay {
  const own = cards.filter((each) => each.service === service);
  const holding = own.filter((each) => holdsOn(each, shipDay));
  const [card] = holding;
  if (holding.length > 1) return { kind: "overlap", cards: holding };
  if (card !== undefined) return { kind: "card", card };
  const ended = own.flatMap(({ validTo }) => (validTo !== null && validTo < shipDay ? [validTo] : []));
  const coming = own.flatMap(({ validFrom }) => (validFrom > shipDay ? [validFrom] : []));
  return { kind: "hole", endedOn: reduced(ended, maxDay), startsOn: reduced(coming, minDay) };
}

/**
 * The card of the main service that holds on a day: where it has run out, no other service stands in for it.
 *
 * @param cards of all services, the main one first
 * @param shipDay day on which the parcel is handed over
 * @returns null where it has none
 */
export function mainCardOn<Card extends Pick<RateCard, "service" | "validFrom" | "validTo">>(
  cards: readonly Card[],
  shipDay: Day,
): Card | null {
  const main = cards[0]?.service;
  return cards.find((card) => card.service === main && holdsOn(card, shipDay)) ?? null;
}

function reduced(days: readonly Day[], choice: (first: Day, second: Day) => Day): Day | null {
  return days.length === 0 ? null : days.reduce(choice);
}
