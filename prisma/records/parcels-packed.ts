import type { Day } from "#lib/units/day";
import type { Database } from "../client";

/**
 * How many parcels were packed in a span of days, from the day roll-up; voided ones are not in it.
 *
 * @param db the database
 * @param from first day
 * @param to last day
 * @returns parcels
 */
export async function parcelsPacked(db: Database, from: Day, to: Day): Promise<number> {
  const sum = await db.parcelDay.aggregate({
    where: { day: { gte: from, lte: to } },
    _sum: { parcels: true },
  });
  return sum._sum.parcels ?? 0;
}
