import { type ClosedCalendar, closedCalendar, openDays } from "#lib/forecast/open-days";
import type { SubjectForecast } from "#lib/forecast/shop/subject-forecast";
import { addDays, type Day, day, daysBetween } from "#lib/units/day";
import type { Database } from "#prisma/client";
import { closedSpansOf } from "#prisma/records/closed-spans";
import { forecastOn, forecastPast, type KeptForecast, type KeptPast } from "#prisma/records/forecasts";
import { itemTypesOf } from "#prisma/records/item-types";
import { plannedEventsOf } from "#prisma/records/planned-events";
import type { Shop } from "#prisma/records/shop";
import { type Assumption, assumptions } from "./assumptions";
import {
  type MarkedEvent,
  markedEvents,
  type OutlookWeek,
  outlookWeeks,
  WEEKS_AHEAD,
  WEEKS_BEFORE,
} from "./outlook-weeks";
import { type RunningTotal, runningTotals } from "./running-totals";
import type { Subject } from "./subject";

const DAYS_A_WEEK = 7;
const PER_MILLE = 1_000;

/** What all subjects of a day share. */
export type OutlookGround = {
  readonly kept: KeptForecast;
  readonly calendar: ClosedCalendar;
  readonly serviceLevel: number;
};

/**
 * The forecast of a day with the shop's closed days and service level.
 *
 * @throws Error when the shop was removed meanwhile
 */
export async function outlookGround(db: Database, shop: Shop, today: Day): Promise<OutlookGround> {
  const [kept, spans] = await Promise.all([forecastOn(db, today), closedSpansOf(db)]);
  if (kept === null) throw new Error("The shop was removed while its forecast was read");
  const calendar = closedCalendar(
    spans.map(({ fromDay, toDay }) => ({ fromDay: day(fromDay), toDay: day(toDay) })),
  );
  return { kept, calendar, serviceLevel: shop.servicePerMille / PER_MILLE };
}

/** Forecast of a subject in the kept one; null where it is not used. */
export function forecastOf(kept: KeptForecast, { kind, id }: Subject): SubjectForecast | null {
  if (kind === "shop") return kept.parcels;
  return (kind === "supply" ? kept.supplies : kept.itemTypes).get(id) ?? null;
}

/** All that the screen of one subject shows. */
export type SubjectFacts = {
  readonly subject: Subject;
  readonly today: Day;
  readonly forecast: SubjectForecast;
  readonly past: KeptPast;
  readonly calendar: ClosedCalendar;
  readonly serviceLevel: number;
  readonly weeks: readonly OutlookWeek[];
  readonly totals: readonly RunningTotal[];
  readonly events: readonly MarkedEvent[];
  /** name of each item type by id */
  readonly names: ReadonlyMap<string, string>;
  readonly assumptions: readonly Assumption[];
};

/**
 * Reads one subject: what is expected, what stands behind it and what it rests on.
 *
 * @param db the open database
 * @param question subject, shop and day, and what all subjects share
 * @returns null where nothing is expected of it: it is not used
 */
export async function readSubject(
  db: Database,
  question: {
    readonly subject: Subject;
    readonly shop: Shop;
    readonly today: Day;
    readonly ground: OutlookGround;
  },
): Promise<SubjectFacts | null> {
  const { subject, shop, today, ground } = question;
  const { kept, calendar, serviceLevel } = ground;
  const forecast = forecastOf(kept, subject);
  const [past, planned, itemTypes] = await Promise.all([
    forecastPast(db, today, subject),
    plannedEventsOf(db),
    itemTypesOf(db, { retired: true }),
  ]);
  if (forecast === null || past === null) return null;
  const { firstWeek } = forecast.path;
  const from = past.weeks.slice(-WEEKS_BEFORE)[0]?.weekStart ?? firstWeek;
  const until = addDays(firstWeek, WEEKS_AHEAD * DAYS_A_WEEK);
  const itemTypeId = subject.kind === "item-type" ? subject.id : null;
  const events = markedEvents(planned, { from, until }, itemTypeId);
  const names = new Map(itemTypes.map(({ id, name }) => [id, name]));
  const ahead = events.filter(({ event }) => event.toDay >= today);
  return {
    subject,
    today,
    forecast,
    past,
    calendar,
    serviceLevel,
    events,
    names,
    weeks: outlookWeeks({ forecast, past: past.weeks, calendar, events }),
    totals: runningTotals(forecast, { today, calendar, serviceLevel }),
    assumptions: assumptions({
      kind: subject.kind,
      forecast,
      guessedParcels: shop.guessedParcels,
      likeName: names.get(forecast.likeId ?? "") ?? null,
      correction: correctionOf(kept, subject),
      season: kept.season,
      pattern: past.pattern,
      eventsAhead: ahead.length,
      closedAhead: daysBetween(today, until) - openDays(today, until, calendar),
    }),
  };
}

/** Factor by which the counts correct a supply's booked use; null without one. */
function correctionOf(kept: KeptForecast, { kind, id }: Subject): number | null {
  const correction = kind === "supply" ? kept.supplies.get(id)?.correction : undefined;
  return correction?.kind === "corrected" ? correction.factor : null;
}
