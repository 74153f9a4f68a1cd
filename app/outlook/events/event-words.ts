import type { PlannedEvent } from "#lib/forecast/planned-event";
import { formatDay } from "#lib/units/day-text";
import { upliftWords } from "./uplift-words";

/**
 * When an event is, how much more it lets go out and for what, in one line.
 *
 * @param event the event
 * @param itemTypeNames name of each item type by id
 * @returns words for a list
 * @example eventWords(market, names) // "1 Dec to 14 Dec 2026: half as much again, all item types"
 */
export function eventWords(event: PlannedEvent, itemTypeNames: ReadonlyMap<string, string>): string {
  const last = formatDay(event.toDay, { year: true });
  const first = formatDay(event.fromDay, { year: event.fromDay.slice(0, 4) !== event.toDay.slice(0, 4) });
  const when = event.fromDay === event.toDay ? last : `${first} to ${last}`;
  const names = event.itemTypeIds.map((id) => itemTypeNames.get(id) ?? id);
  return `${when}: ${upliftWords(event.upliftPercent)}, ${names.length === 0 ? "all item types" : `only ${names.join(", ")}`}`;
}
