import type { CheckRow, WeeklyCheck } from "#lib/replenishment/weekly-check";
import { AMOUNT_PER_UNIT } from "#lib/units/amount";
import { weeklyCheckOn } from "#prisma/records/weekly-checks";
import { askedShopDay, NO_SHOP } from "../asked-shop-day";

/**
 * The weekly check as JSON: `GET /api/weekly-check?today=2026-11-25`. Amounts are given in use units and
 * as they are stored, in 1/12,000 of the use unit.
 */
export async function GET(request: Request): Promise<Response> {
  const asked = await askedShopDay(request);
  if (asked instanceof Response) return asked;
  const check = await weeklyCheckOn(asked.db, asked.today);
  if (check === null) return Response.json(NO_SHOP, { status: 404 });
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
