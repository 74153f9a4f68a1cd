import { type DeliveryTerms, promisedDay } from "#lib/replenishment/lead-time/delivery-terms";
import { type Day, daysBetween } from "#lib/units/day";

/** One line of an order, or the part of it that came on one day. */
export type PastDelivery = {
  readonly orderedOn: Day;
  /** null while it has not come */
  readonly receivedOn: Day | null;
  /** share of the ordered packs, above 0 to 1 */
  readonly share: number;
};

/** How late a delivery was. */
export type Lateness = {
  readonly orderedOn: Day;
  /** days after the promised day; below 0 it came early */
  readonly days: number;
  readonly share: number;
  /** it has not come yet: it is at least so late */
  readonly isOpen: boolean;
};

/**
 * How late past deliveries were, by the supplier's promise as it stands. One that has not come tells something from
 * the day after its promised day on: that it is later than that.
 *
 * @param deliveries in any order
 * @param terms what the supplier promises
 * @param today nothing later is looked at
 * @returns the latenesses known today, oldest order first
 * @example latenesses([{ orderedOn: day("2026-11-02"), receivedOn: day("2026-11-13"), share: 1 }], plainTerms(9), today)
 *   // one, 2 days late
 */
export function latenesses(
  deliveries: readonly PastDelivery[],
  terms: DeliveryTerms,
  today: Day,
): Lateness[] {
  return deliveries
    .flatMap(({ orderedOn, receivedOn, share }): Lateness[] => {
      if (orderedOn > today) return [];
      const promised = promisedDay(orderedOn, terms);
      if (receivedOn !== null && receivedOn <= today) {
        return [{ orderedOn, days: daysBetween(promised, receivedOn), share, isOpen: false }];
      }
      if (promised >= today) return [];
      return [{ orderedOn, days: daysBetween(promised, today) + 1, share, isOpen: true }];
    })
    .toSorted((a, b) => (a.orderedOn < b.orderedOn ? -1 : 1));
}
