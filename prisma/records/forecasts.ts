import { closedCalendar } from "#lib/forecast/open-days";
import type { SubjectForecast, SupplyForecast } from "#lib/forecast/shop/subject-forecast";
import { type Day, day } from "#lib/units/day";
import { type Instant, instant, instantOfTime } from "#lib/units/instant";
import { type Database, inTransaction } from "../client";
import { closedSpansOf } from "./closed-spans";
import { type ForecastSpan, forecastInputs, forecastSpan } from "./forecast-inputs";
import {
  type ForecastFrame,
  type ForecastPart,
  type ForecastSubject,
  forecastParts,
  type PartPast,
} from "./forecast-parts";
import { forecastRows } from "./forecast-rows";
import { readText, writtenText } from "./forecast-text";
import { type Shop, shopOf } from "./shop";

/** Raised when the reckoning changes, so that what an older one made is made anew. */
const EDITION = 2;
/** Stands in the row while a forecast is being made. */
const BEING_MADE = 0;
/** Forecasts of so many days are kept: the running week's, and some that were asked for. */
const MOST_KEPT = 12;

/** A forecast as it is kept. Parcels for the shop, pieces for item types, use units for supplies. */
export type KeptForecast = ForecastFrame & {
  readonly asOf: Day;
  /** the first day that it did not look at */
  readonly until: Day;
  readonly madeAt: Instant;
  readonly parcels: SubjectForecast | null;
  readonly itemTypes: ReadonlyMap<string, SubjectForecast>;
  /** only supplies that are used */
  readonly supplies: ReadonlyMap<string, SupplyForecast>;
};

/** What stands behind a subject's forecast, with what the counts say and the name of the item type that it starts from. */
export type KeptPast = PartPast & {
  /** what the booked use is multiplied by; null where the counts say nothing, and for item types */
  readonly correction: number | null;
  readonly likeName: string | null;
};

/** Forecasts that are being made in this process: who asks meanwhile waits for the same one. */
const beingMade = new WeakMap<Database, Map<Day, Promise<void>>>();

/**
 * The forecast of a day. It is worked out once and kept; as long as nothing changes that it was made from, it is only
 * read.
 *
 * @param db the database
 * @param today the day of the forecast
 * @returns null before the shop is set up
 */
export async function forecastOn(db: Database, today: Day): Promise<KeptForecast | null> {
  const place = await forecastPlace(db, today);
  if (place === null) return null;
  const kept = await keptForecast(db, place.asOf);
  if (kept !== null) return kept;
  await makeOnce(db, place, today);
  const made = await keptForecast(db, place.asOf, { orStale: true });
  if (made === null) throw new Error(`The forecast of ${place.asOf} was removed while it was made`);
  return made;
}

/**
 * What stands behind the forecast of one subject.
 *
 * @param db the database
 * @param today the day of the forecast
 * @param subject the shop, an item type or a supply
 * @returns null before the shop is set up, and for a subject without a forecast
 */
export async function forecastPast(
  db: Database,
  today: Day,
  { kind, id }: ForecastSubject,
): Promise<KeptPast | null> {
  const forecast = await forecastOn(db, today);
  if (forecast === null) return null;
  const row = await db.forecastSubject.findUnique({
    where: { asOf_kind_subjectId: { asOf: forecast.asOf, kind, subjectId: id } },
    select: { coming: true, past: true },
  });
  if (row === null) return null;
  const coming = readText<SubjectForecast & Partial<SupplyForecast>>(row.coming);
  const like =
    coming.likeId === null
      ? null
      : await db.itemType.findUnique({ where: { id: coming.likeId }, select: { name: true } });
  return {
    ...readText<PartPast>(row.past),
    correction: coming.correction?.kind === "corrected" ? coming.correction.factor : null,
    likeName: like?.name ?? null,
  };
}

/** Where a forecast is kept, and how far it looks back. */
export type ForecastPlace = { readonly shop: Shop; readonly asOf: Day; readonly span: ForecastSpan };

/** Where the forecast of a day is kept: under its week, or under the day while no week is over. */
export async function forecastPlace(db: Database, today: Day): Promise<ForecastPlace | null> {
  const [shop, first, closed] = await Promise.all([
    shopOf(db),
    db.parcelDay.findFirst({ orderBy: { day: "asc" }, select: { day: true } }),
    closedSpansOf(db),
  ]);
  if (shop === null) return null;
  const calendar = closedCalendar(
    closed.map((each) => ({ fromDay: day(each.fromDay), toDay: day(each.toDay) })),
  );
  const span = forecastSpan({ shop, calendar, firstDay: first === null ? null : day(first.day) }, today);
  return { shop, span, asOf: span.weeks.length > 0 ? span.until : today };
}

async function keptForecast(
  db: Database,
  asOf: Day,
  { orStale = false }: { readonly orStale?: boolean } = {},
): Promise<KeptForecast | null> {
  const row = await db.forecast.findUnique({ where: { asOf } });
  if (row === null || row.edition !== EDITION || (row.stale && !orStale)) return null;
  const subjects = await db.forecastSubject.findMany({
    where: { asOf },
    select: { kind: true, subjectId: true, coming: true },
  });
  const of = <Coming extends SubjectForecast>(kind: ForecastSubject["kind"]): Map<string, Coming> =>
    new Map(
      subjects
        .filter((subject) => subject.kind === kind)
        .map((subject) => [subject.subjectId, readText<Coming>(subject.coming)]),
    );
  return {
    asOf,
    until: day(row.until),
    madeAt: instant(row.madeAt),
    ...readText<ForecastFrame>(row.ground),
    parcels: of<SubjectForecast>("shop").get("shop") ?? null,
    itemTypes: of<SubjectForecast>("item-type"),
    supplies: of<SupplyForecast>("supply"),
  };
}

async function makeOnce(db: Database, place: ForecastPlace, today: Day): Promise<void> {
  const running = beingMade.get(db) ?? new Map<Day, Promise<void>>();
  beingMade.set(db, running);
  const making = running.get(place.asOf) ?? makeForecast(db, place, today);
  running.set(place.asOf, making);
  try {
    await making;
  } finally {
    running.delete(place.asOf);
  }
}

async function makeForecast(db: Database, { shop, asOf, span }: ForecastPlace, today: Day): Promise<void> {
  // First, so that what changes while the rows are read and reckoned with marks this forecast as stale.
  const head = { until: span.until, edition: BEING_MADE, madeAt: now(), stale: false, ground: "" };
  await inTransaction(db, (tx) =>
    tx.forecast.upsert({ where: { asOf }, create: { asOf, ...head }, update: head }),
  );
  const rows = await forecastRows(db, shop, span.until);
  const parts = forecastParts(forecastInputs(rows, span, today), span);
  const made: ForecastPart[] = [];
  let next = parts.next();
  while (next.done !== true) {
    if (next.value !== null) made.push(next.value);
    await breath();
    next = parts.next();
  }
  const frame = next.value;
  await inTransaction(db, async (tx) => {
    await tx.forecastSubject.deleteMany({ where: { asOf } });
    await tx.forecastSubject.createMany({
      data: made.map(({ subject, coming, past }) => ({
        asOf,
        kind: subject.kind,
        subjectId: subject.id,
        coming: writtenText(coming),
        past: writtenText(past),
      })),
    });
    await tx.forecast.update({
      where: { asOf },
      data: { edition: EDITION, madeAt: now(), ground: writtenText(frame) },
    });
    const old = await tx.forecast.findMany({
      where: { asOf: { not: asOf } },
      orderBy: { madeAt: "desc" },
      skip: MOST_KEPT - 1,
      select: { asOf: true },
    });
    await tx.forecast.deleteMany({ where: { asOf: { in: old.map((each) => each.asOf) } } });
  });
}

/** Lets requests that came meanwhile have their turn: a parcel is not kept waiting by a forecast. */
function breath(): Promise<void> {
  return new Promise((resolve) => setImmediate(resolve));
}

function now(): Instant {
  return instantOfTime(Date.now());
}
