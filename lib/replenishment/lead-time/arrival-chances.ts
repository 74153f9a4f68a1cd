import { type ClosedCalendar, nextOpenDay } from "#lib/forecast/open-days";
import { type DeliveryTerms, promisedDay } from "#lib/replenishment/lead-time/delivery-terms";
import type { LatenessBelief } from "#lib/replenishment/lead-time/lateness-belief";
import { addDays, type Day, maxDay } from "#lib/units/day";

/** Chance that an order comes on a day. */
export type ArrivalChance = { readonly day: Day; readonly chance: number };

/**
 * When an order placed on a day may come: the promised day and as many days later as the belief says, never before the
 * order itself; on a closed day of the shop it comes on the next open one.
 *
 * @param orderedOn the day the order is placed
 * @param supplier its terms, and how late it may be
 * @param calendar closed days of the shop
 * @returns days in order with their chances
 * @example arrivalChances(day("2026-11-25"), { terms: plainTerms(9), belief }, []) // 2026-12-04: 0.65, ...
 */
export function arrivalChances(
  orderedOn: Day,
  supplier: { readonly terms: DeliveryTerms; readonly belief: LatenessBelief },
  calendar: ClosedCalendar,
): ArrivalChance[] {
  const promised = promisedDay(orderedOn, supplier.terms);
  const days = new Map<Day, number>();
  for (const { daysLate, chance } of supplier.belief.chances) {
    const day = nextOpenDay(maxDay(orderedOn, addDays(promised, daysLate)), calendar);
    days.set(day, (days.get(day) ?? 0) + chance);
  }
  return [...days].map(([day, chance]) => ({ day, chance })).toSorted((a, b) => (a.day < b.day ? -1 : 1));
}

/**
 * The day by which an order comes as a rule: the first day on which it has come with a chance of a half.
 *
 * @param arrivals days in order with their chances
 * @throws RangeError when there is none
 * @example usualArrival([{ day: day("2026-12-04"), chance: 0.65 }, { day: day("2026-12-06"), chance: 0.35 }]) // 2026-12-04
 */
export function usualArrival(arrivals: readonly ArrivalChance[]): Day {
  return arrivalBy(arrivals, 0.5);
}

/**
 * The first day by which an order has come with a given chance.
 *
 * @param arrivals days in order with their chances
 * @param level from 0 to 1
 * @throws RangeError when there is no day
 * @example arrivalBy([{ day: day("2026-12-04"), chance: 0.65 }, { day: day("2026-12-06"), chance: 0.35 }], 0.9) // 2026-12-06
 */
export function arrivalBy(arrivals: readonly ArrivalChance[], level: number): Day {
  let reached = 0;
  for (const { day, chance } of arrivals) {
    reached += chance;
    if (reached >= level - 1e-12) return day;
  }
  const last = arrivals.at(-1);
  if (last === undefined) throw new RangeError("arrivalBy requires a day, got none");
  return last.day;
}
