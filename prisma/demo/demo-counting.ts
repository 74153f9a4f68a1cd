import { AMOUNT_PER_UNIT, type Amount, amount, unitsOf } from "#lib/units/amount";
import { addDays, type Day } from "#lib/units/day";
import { type DemoCalendar, type demoClock, packsOn } from "#prisma/demo/demo-calendar";
import { type DemoEvent, wantOutcome } from "#prisma/demo/demo-event";
import { type DemoSpoilage, type DemoUse, usedBetween } from "#prisma/demo/demo-use";
import type { Random } from "#prisma/demo/seeded-random";
import { recordCount } from "#prisma/records/counts";
import { recordSpoilage } from "#prisma/records/spoilage";

const COUNTED_WEEKLY: readonly string[] = ["packing-paper", "small-bubble"];
const DAYS_SINCE_WEEKLY = 3;
const DAYS_SINCE_MONTHLY = 10;
const EVENING = 18 * 60;
const AFTERNOON = 16 * 60;
/** Up to this share of the use is never recorded and comes out at the count. */
const UNRECORDED = 0.03;

/** A supply that is counted on a day, and how many days its last count was ago. */
export type DemoCountDay = { readonly supplyId: string; readonly on: Day; readonly days: number };

/** Days on which the demo shop counts a supply: the quick ones weekly, the others monthly. Oldest first. */
export function countDays(calendar: DemoCalendar, supplyId: string): DemoCountDay[] {
  const weekly = COUNTED_WEEKLY.includes(supplyId);
  const days = weekly ? 7 : 28;
  const last = addDays(calendar.today, weekly ? -DAYS_SINCE_WEEKLY : -DAYS_SINCE_MONTHLY);
  const all: DemoCountDay[] = [];
  for (let on = last; on >= addDays(calendar.firstDay, days); on = addDays(on, -days)) {
    all.push({ supplyId, on, days });
  }
  return all.reverse();
}

/** What was used and never recorded up to a count: a few sheets or pieces, found by counting. */
export function unrecordedUse(random: Random, use: DemoUse, count: DemoCountDay): Amount {
  const recorded = usedBetween(use, count.supplyId, addDays(count.on, 1 - count.days), count.on);
  return amount(Math.round(unitsOf(recorded) * UNRECORDED * random()) * AMOUNT_PER_UNIT);
}

/** A torn sheet here, a wet carton there: about once in three weeks. */
export function demoSpoilage(random: Random, calendar: DemoCalendar, days: readonly Day[]): DemoSpoilage[] {
  const kinds = [
    { supplyId: "tissue", units: 4, words: "Torn" },
    { supplyId: "small-bubble", units: 3, words: "Popped at the start of the roll" },
    { supplyId: "packing-paper", units: 6, words: "Damp" },
    { supplyId: "carton-12x12x8", units: 1, words: "Creased" },
  ] as const;
  return days
    .filter((on) => packsOn(calendar, on) && random() < 1 / 15)
    .map((on, index) => ({ ...(kinds[index % kinds.length] ?? kinds[0]), on }));
}

/** Records a spoilage in the afternoon. */
export function spoilageEvent(spoilt: DemoSpoilage, clock: ReturnType<typeof demoClock>): DemoEvent {
  const { units, ...rest } = spoilt;
  const body = { ...rest, amount: amount(units * AMOUNT_PER_UNIT), typedValue: String(units), typedUnit: "" };
  return {
    at: clock(spoilt.on, AFTERNOON),
    record: async (db, by) => wantOutcome(await recordSpoilage(db, body, by), ["spoilt"]),
  };
}

/** Records a count in the evening, when the day's parcels are packed. */
export function countEvent(
  count: { readonly supplyId: string; readonly on: Day; readonly amount: Amount },
  clock: ReturnType<typeof demoClock>,
): DemoEvent {
  const { supplyId, on } = count;
  const typed = String(Math.round(unitsOf(count.amount) * 100) / 100);
  const body = {
    id: `demo-${supplyId}-${on}`,
    supplyId,
    amount: count.amount,
    method: "number",
    typed,
  } as const;
  return {
    at: clock(on, EVENING),
    record: async (db, by) => wantOutcome(await recordCount(db, { ...body, note: null }, by), ["counted"]),
  };
}
