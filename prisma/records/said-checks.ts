import { closedCalendar, openDays } from "#lib/forecast/open-days";
import type { SaidAndCame } from "#lib/replenishment/check-outcome";
import { amount } from "#lib/units/amount";
import { addDays, type Day, day } from "#lib/units/day";
import type { Database } from "../client";
import { closedSpansOf } from "./closed-spans";

/** A check that was said some days ago, and what came since. */
export type SaidCheck = { readonly saidOn: Day; readonly rows: readonly SaidAndCame[] };

const DAYS_A_WEEK = 7;
/** A check of the last few days has had no time to turn out. */
const LEAST_DAYS = 5;
const MOST_DAYS = 35;

/**
 * The last check that is a few days old, with what came since: use from the day roll-up, whether the book reached
 * nothing, and what was ordered.
 *
 * @param db the database
 * @param today the day on which it is looked back
 * @returns the check, or null where none was said in the last five weeks
 */
export async function lastSaidCheck(db: Database, today: Day): Promise<SaidCheck | null> {
  const said = await db.weeklyCheck.findFirst({
    where: { day: { lte: addDays(today, -LEAST_DAYS), gte: addDays(today, -MOST_DAYS) } },
    orderBy: { day: "desc" },
    include: { rows: true },
  });
  if (said === null) return null;
  const saidOn = day(said.day);
  const since = { day: { gt: said.day, lte: today } };
  const [days, purchases, closed] = await Promise.all([
    db.supplyDay.findMany({ where: since, orderBy: { day: "asc" } }),
    db.purchaseLine.findMany({
      where: { purchase: { state: "placed", placedOn: { gte: said.day, lte: today } } },
      select: { supplyId: true },
    }),
    closedSpansOf(db),
  ]);
  const calendar = closedCalendar(
    closed.map((span) => ({ fromDay: day(span.fromDay), toDay: day(span.toDay) })),
  );
  const open = openDays(addDays(saidOn, 1), addDays(today, 1), calendar);
  const ordered = new Set(purchases.map((line) => line.supplyId));
  const rows = said.rows.map((row): SaidAndCame => {
    const own = days.filter((each) => each.supplyId === row.supplyId);
    const perWeek = row.usePerWeek === null ? null : Number(row.usePerWeek);
    return {
      supplyId: row.supplyId,
      expected: perWeek === null ? null : amount(Math.round((perWeek * open) / DAYS_A_WEEK)),
      used: amount(usedIn(own)),
      ranOut: row.onHand !== null && reachedNothing(Number(row.onHand), own),
      wasToOrder: row.action === "order-today" || row.action === "order-this-week",
      wasOrdered: ordered.has(row.supplyId),
    };
  });
  return { saidOn, rows };
}

type DayRow = {
  readonly day: string;
  readonly cause: string;
  readonly unusual: boolean;
  readonly amount: bigint;
};
const USES = ["packed", "spoilt", "returned"];

function usedIn(rows: readonly DayRow[]): number {
  return rows
    .filter((row) => USES.includes(row.cause) && !row.unusual)
    .reduce((sum, row) => sum - Number(row.amount), 0);
}

/** Whether the book stood at or under nothing at the end of a day. */
function reachedNothing(start: number, rows: readonly DayRow[]): boolean {
  let stock = start;
  return [...new Set(rows.map((row) => row.day))].some((on) => {
    stock += rows.filter((row) => row.day === on).reduce((sum, row) => sum + Number(row.amount), 0);
    return stock <= 0;
  });
}
