import type { PlannedEvent } from "#lib/forecast/planned-event";
import type { Day } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";

/**
 * The first line of Planned events: what is on or comes next.
 *
 * @param events all events, earliest first
 * @param today the shop's day
 * @returns a sentence
 * @example eventsFinding([], day("2026-11-25")) // "No event is planned: every week counts as a usual one."
 */
export function eventsFinding(events: readonly PlannedEvent[], today: Day): string {
  if (events.length === 0) return "No event is planned: every week counts as a usual one.";
  const [next, ...others] = events.filter((event) => event.toDay >= today);
  if (next === undefined) return "No event is ahead; those that are over do not count as usual trade.";
  const dayWords = (of: Day) => formatDay(of, { weekday: true, year: of.slice(0, 4) !== today.slice(0, 4) });
  const first =
    next.fromDay <= today
      ? `${next.name} is on until ${dayWords(next.toDay)}`
      : `${next.name} begins on ${dayWords(next.fromDay)}`;
  if (others.length === 0) return `${first}.`;
  return `${first}; ${others.length === 1 ? "one more event is" : `${others.length} more events are`} planned.`;
}
