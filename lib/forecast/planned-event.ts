import { addDays, type Day, daysBetween } from "#lib/units/day";

/** Days of which the seller knows that more (or less) is sold, both ends included. How much is the seller's guess. */
export type PlannedEvent = {
  readonly id: string;
  readonly name: string;
  readonly fromDay: Day;
  readonly toDay: Day;
  /** percent more than usual, from -100 */
  readonly upliftPercent: number;
  /** empty: all item types */
  readonly itemTypeIds: readonly string[];
};

/** What an event may say. More than 120 days is no event but a season or a new level of trade. */
export const EVENT_LIMITS = { letters: 60, days: 120, leastUplift: -100, mostUplift: 900 } as const;

const PERCENT = 100;

/**
 * How much of an item type the planned events let go out, against usual days: the mean over the days of the product
 * of (1 + uplift/100) of the events on that day that hold for the item type. Events are multiplied where two fall on
 * one day.
 *
 * @param events planned events in any order
 * @param itemTypeId item type asked about
 * @param from first day counted
 * @param until the day after the last one counted
 * @returns a factor from 0; 1 where no event falls
 * @throws RangeError when `until` does not lie after `from`
 * @see common practice, no source
 * @example
 * const market = { id: "market", name: "Market", fromDay: day("2026-12-01"), toDay: day("2026-12-14"),
 *   upliftPercent: 50, itemTypeIds: [] };
 * eventFactor([market], "mug", day("2026-12-07"), day("2026-12-14")) // 1.5: all seven days
 * eventFactor([market], "mug", day("2026-12-14"), day("2026-12-21")) // 7.5 / 7: one day of seven
 */
export function eventFactor(
  events: readonly PlannedEvent[],
  itemTypeId: string,
  from: Day,
  until: Day,
): number {
  if (until <= from) {
    throw new RangeError(`eventFactor requires an end after ${from}, got ${until}`);
  }
  const holding = events.filter(
    (event) => event.fromDay < until && event.toDay >= from && holdsFor(event, itemTypeId),
  );
  if (holding.length === 0) return 1;
  const days = daysBetween(from, until);
  const sum = Array.from({ length: days }, (_, ahead) => dayFactor(holding, addDays(from, ahead))).reduce(
    (total, factor) => total + factor,
    0,
  );
  return sum / days;
}

function dayFactor(events: readonly PlannedEvent[], on: Day): number {
  return events
    .filter((event) => event.fromDay <= on && on <= event.toDay)
    .reduce((factor, event) => factor * (1 + event.upliftPercent / PERCENT), 1);
}

function holdsFor(event: PlannedEvent, itemTypeId: string): boolean {
  return event.itemTypeIds.length === 0 || event.itemTypeIds.includes(itemTypeId);
}
