import type { DayUse } from "#lib/forecast/weekly-use";
import { type Amount, amount } from "#lib/units/amount";
import { type Day, day } from "#lib/units/day";
import type { Database } from "../client";

/** What the day roll-up says of a supply until a day. */
export type SupplyHistory = {
  /** sum of all movements */
  readonly onHand: Amount;
  /** packed and spoilt less returned, unusual parcels left out; oldest first */
  readonly useByDay: readonly DayUse[];
  /** count less book, later counts only; oldest first */
  readonly countDifferences: readonly DayUse[];
};

type Row = {
  readonly supplyId: string;
  readonly onHand: bigint | number;
  readonly useByDay: string | null;
  readonly countDifferences: string | null;
};

/**
 * Every supply's history, summed a day, up to and with a day. The database adds up and writes each supply's
 * days as one text: two years of sixty supplies are 44,000 days, and a row object for each takes ten times
 * as long as all the rest of a weekly check.
 *
 * @param db the database
 * @param until last day that counts
 * @returns histories by supply; none for a supply that never moved
 */
export async function supplyHistories(db: Database, until: Day): Promise<Map<string, SupplyHistory>> {
  const rows = await db.$queryRaw<Row[]>`
    SELECT "supplyId", SUM("amount") AS "onHand",
      GROUP_CONCAT("day" || ' ' || -"amount", ';' ORDER BY "day")
        FILTER (WHERE "cause" IN ('packed', 'spoilt', 'returned') AND NOT "unusual") AS "useByDay",
      GROUP_CONCAT("day" || ' ' || "amount", ';' ORDER BY "day")
        FILTER (WHERE "cause" = 'count-difference') AS "countDifferences"
    FROM "SupplyDay" WHERE "day" <= ${until} GROUP BY "supplyId"`;
  return new Map(
    rows.map((row) => [
      row.supplyId,
      {
        onHand: amount(Number(row.onHand)),
        useByDay: dayUses(row.useByDay),
        countDifferences: dayUses(row.countDifferences),
      },
    ]),
  );
}

function dayUses(text: string | null): DayUse[] {
  if (text === null) return [];
  return text.split(";").map((entry) => {
    const gap = entry.indexOf(" ");
    return { day: day(entry.slice(0, gap)), amount: amount(Number(entry.slice(gap + 1))) };
  });
}
