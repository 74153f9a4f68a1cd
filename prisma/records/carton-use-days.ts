import { AMOUNT_PER_UNIT } from "#lib/units/amount";
import { type Day, day } from "#lib/units/day";
import type { Database } from "../client";

/** What was used of the cartons: by carton and day. */
export type CartonDays = ReadonlyMap<string, readonly { readonly day: Day; readonly cartons: number }[]>;

type Row = { readonly supplyId: string; readonly day: string; readonly amount: number | bigint };

/**
 * The days on which each carton was used, unusual parcels too: a carton that went is gone.
 *
 * @param db the database
 * @param from first day
 * @returns by supply, oldest day first; a day's use may be below zero where cartons came back
 */
export async function cartonUseDays(db: Database, from: Day): Promise<CartonDays> {
  const rows = await db.$queryRaw<Row[]>`
    SELECT days."supplyId", days."day", -SUM(days."amount") AS "amount"
    FROM "SupplyDay" days JOIN "Supply" supply ON supply."id" = days."supplyId"
    WHERE supply."kind" = 'carton' AND days."day" >= ${from} AND days."cause" IN ('packed', 'returned')
    GROUP BY days."supplyId", days."day" ORDER BY days."day"`;
  const byCarton = new Map<string, { day: Day; cartons: number }[]>();
  for (const row of rows) {
    const used = { day: day(row.day), cartons: Number(row.amount) / AMOUNT_PER_UNIT };
    const own = byCarton.get(row.supplyId);
    if (own === undefined) byCarton.set(row.supplyId, [used]);
    else own.push(used);
  }
  return byCarton;
}

/**
 * The first day on which anything was packed: from then on the use of cartons is on record.
 *
 * @param db the database
 * @returns null before the first parcel
 */
export async function firstPackedDay(db: Database): Promise<Day | null> {
  const { _min } = await db.parcel.aggregate({ where: { voidedAt: null }, _min: { packedOn: true } });
  return _min.packedOn === null ? null : day(_min.packedOn);
}
