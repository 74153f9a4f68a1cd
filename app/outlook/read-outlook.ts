import type { ClosedCalendar } from "#lib/forecast/open-days";
import type { PlannedEvent } from "#lib/forecast/planned-event";
import type { SubjectForecast } from "#lib/forecast/shop/subject-forecast";
import type { Day } from "#lib/units/day";
import type { Database } from "#prisma/client";
import { forecastWeeks } from "#prisma/records/forecast-weeks";
import type { KeptForecast } from "#prisma/records/forecasts";
import { itemTypesOf } from "#prisma/records/item-types";
import { plannedEventsOf } from "#prisma/records/planned-events";
import { suppliesOf } from "#prisma/records/supplies";
import { lastWeeksSum } from "./last-weeks-sum";
import { type RunningTotal, runningTotal } from "./running-totals";
import { itemTypeSubject, type Subject, supplySubject } from "./subject";

/** Weeks that the lists look ahead and back. */
export const WEEKS_LISTED = 4;

/** A supply or item type in the list. */
export type OutlookRow = {
  readonly subject: Subject;
  readonly total: RunningTotal;
  /** sum of as many weeks before; null where the records do not reach that far */
  readonly before: number | null;
  readonly guessedShare: number;
};

/** All rows of the Outlook screen. */
export type OutlookLists = {
  readonly supplies: readonly OutlookRow[];
  readonly itemTypes: readonly OutlookRow[];
  /** supplies on the shelf that no use is expected of */
  readonly unused: readonly Subject[];
  /** planned events that are on or come */
  readonly events: readonly PlannedEvent[];
  /** name of each item type by id, those out of use too */
  readonly names: ReadonlyMap<string, string>;
};

/** What the lists are asked about. */
export type OutlookQuestion = {
  readonly today: Day;
  readonly calendar: ClosedCalendar;
  readonly serviceLevel: number;
};

/**
 * The lists of the Outlook screen, in the order of the shelf.
 *
 * @param db the open database
 * @param kept the forecast of the day
 * @param question the day, closed days and the service level
 */
export async function readOutlook(
  db: Database,
  kept: KeptForecast,
  question: OutlookQuestion,
): Promise<OutlookLists> {
  const [supplies, itemTypes, planned, weeksOf] = await Promise.all([
    suppliesOf(db),
    itemTypesOf(db, { retired: true }),
    plannedEventsOf(db),
    forecastWeeks(db, kept.asOf),
  ]);
  const found = supplies.map((supply) => ({
    subject: supplySubject(supply),
    forecast: kept.supplies.get(supply.id),
  }));
  const inUse = itemTypes.filter(({ retired }) => !retired);
  const sold = inUse.map((itemType) => ({
    subject: itemTypeSubject(itemType),
    forecast: kept.itemTypes.get(itemType.id),
  }));
  return {
    supplies: rowsOf(found, weeksOf, question),
    itemTypes: rowsOf(sold, weeksOf, question),
    unused: found.flatMap(({ subject, forecast }) => (forecast === undefined ? [subject] : [])),
    events: planned.filter((event) => event.toDay >= question.today),
    names: new Map(itemTypes.map(({ id, name }) => [id, name])),
  };
}

type Found = { readonly subject: Subject; readonly forecast: SubjectForecast | undefined };

function rowsOf(
  found: readonly Found[],
  weeksOf: Awaited<ReturnType<typeof forecastWeeks>>,
  question: OutlookQuestion,
): OutlookRow[] {
  return found.flatMap(({ subject, forecast }): OutlookRow[] => {
    if (forecast === undefined) return [];
    return [
      {
        subject,
        total: runningTotal(forecast, { ...question, weeks: WEEKS_LISTED }),
        before: lastWeeksSum(weeksOf(subject), WEEKS_LISTED),
        guessedShare: forecast.guessedShare,
      },
    ];
  });
}
