import type { Day } from "#lib/units/day";
import type { Transaction } from "../client";

/** Sorts before every day: all forecasts looked back until some day after it. */
const BEFORE_ALL_DAYS = "";

/**
 * Marks the kept forecasts that no longer say what the records say. A forecast looks back until a day, which it leaves
 * out: what changes before that day makes it stale. Without a day (a setting, an event, a recipe changed) all of them
 * are.
 *
 * @param tx the transaction that makes the change
 * @param changedDay the day that something was recorded for; left out where the change belongs to no day
 * @example await staleForecasts(tx, day("2026-11-25")); // those that looked back until 26 November or later
 */
export async function staleForecasts(tx: Transaction, changedDay?: Day): Promise<void> {
  await tx.$executeRaw`
    UPDATE "Forecast" SET "stale" = true
    WHERE NOT "stale" AND "until" > ${changedDay ?? BEFORE_ALL_DAYS}`;
}
