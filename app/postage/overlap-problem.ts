import type { RateCard } from "#lib/postage/rate-card";
import { formatDay } from "#lib/units/day-text";

type CardDays = Pick<RateCard, "service" | "validFrom" | "validTo"> & { readonly id: string };

/**
 * Two cards of one service can't hold on the same day: no parcel would know its price.
 *
 * @param card the card to be kept
 * @param others cards that are kept; the card itself may be among them
 * @returns words with the way out, or null where no day is claimed twice
 */
export function overlapProblem(card: CardDays, others: readonly CardDays[]): string | null {
  const other = others.find(
    ({ id, service, validFrom, validTo }) =>
      id !== card.id &&
      service === card.service &&
      (validTo === null || card.validFrom <= validTo) &&
      (card.validTo === null || validFrom <= card.validTo),
  );
  if (other === undefined) return null;
  const from = formatDay(other.validFrom, { year: true });
  return `Another card of ${card.service} holds from ${from} ${other.validTo === null ? "on" : `to ${formatDay(other.validTo, { year: true })}`}. Give that one a last day first, or choose other days.`;
}
