import type { Day } from "#lib/units/day";
import type { Database } from "../client";
import type { ForecastSubject, PartPast, PastWeek } from "./forecast-parts";
import { readText } from "./forecast-text";

/**
 * Past weeks of all subjects of a kept forecast, read at once.
 *
 * @param db the database
 * @param asOf the day under which the forecast is kept
 * @returns a function from a subject to its weeks, oldest first; none for a subject without a forecast
 */
export async function forecastWeeks(
  db: Database,
  asOf: Day,
): Promise<(subject: ForecastSubject) => readonly PastWeek[]> {
  const rows = await db.forecastSubject.findMany({
    where: { asOf },
    select: { kind: true, subjectId: true, past: true },
  });
  const weeks = new Map(
    rows.map((row) => [`${row.kind} ${row.subjectId}`, readText<PartPast>(row.past).weeks] as const),
  );
  return ({ kind, id }) => weeks.get(`${kind} ${id}`) ?? [];
}
