import type { CheckRow, WeeklyCheck } from "#lib/replenishment/weekly-check";
import { AMOUNT_PER_UNIT } from "#lib/units/amount";
import { instantOfTime, shopDay } from "#lib/units/instant";
import { database } from "#prisma/client";
import { shopOf } from "#prisma/records/shop";
import { weeklyCheckOn } from "#prisma/records/weekly-checks";
import { askedDay } from "../../this-week/asked-day";

/**
 * The weekly check as JSON: `GET /api/weekly-check?today=2026-11-25`. Amounts are given in use units and
 * as they are stored, in 1/12,000 of the use unit.
 */
export async function GET(request: Request): Promise<Response> {
  const asked = askedDay(new URL(request.url).searchParams.get("today"));
  if (asked.kind === "unreadable") {
    return Response.json(
      { kind: "unreadable-day", field: "today", typed: asked.text, form: "YYYY-MM-DD" },
      { status: 400 },
    );
  }
  const db = await database();
  const shop = await shopOf(db);
  if (shop === null) return Response.json({ kind: "no-shop" }, { status: 404 });
  const today = asked.kind === "day" ? asked.day : shopDay(instantOfTime(Date.now()), shop.timeZone);
  const check = await weeklyCheckOn(db, today);
  if (check === null) return Response.json({ kind: "no-shop" }, { status: 404 });
  return Response.json(checkBody(check));
}

function checkBody(check: WeeklyCheck) {
  return { day: check.day, finding: check.finding, rows: check.rows.map(rowBody), toCount: check.toCount };
}

function rowBody(row: CheckRow) {
  return {
    ...row,
    onHand: amountBody(row.onHand),
    onOrder: amountBody(row.onOrder),
    usePerWeek: amountBody(row.usePerWeek),
    expectedUse: amountBody(row.expectedUse),
    errorDeviation: amountBody(row.errorDeviation),
    safetyStock: amountBody(row.safetyStock),
    reorderPoint: amountBody(row.reorderPoint),
    weeks: row.weeks.map((week) => ({ ...week, amount: amountBody(week.amount) })),
    arrivals: row.arrivals.map((arrival) => ({ ...arrival, amount: amountBody(arrival.amount) })),
  };
}

/** An amount in use units beside the amount as stored; null stays null, for unknown is not zero. */
function amountBody(stored: number | null): { units: number; amount: number } | null {
  return stored === null ? null : { units: stored / AMOUNT_PER_UNIT, amount: stored };
}
