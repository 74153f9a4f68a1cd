import type { WeeklyCheck } from "#lib/replenishment/weekly-check";
import type { Instant } from "#lib/units/instant";
import type { Database } from "#prisma/client";
import { sayWeeklyCheck } from "#prisma/records/weekly-checks";

/** What was last kept by this process, so that showing the same check again writes nothing. */
let lastKept = "";

/**
 * Keeps the check of the day as it was said; a day has one, the last that was said on it.
 *
 * @param db - the database
 * @param check - what the screen says
 * @param now - the moment it is said
 */
export async function keepCheck(db: Database, check: WeeklyCheck, now: Instant): Promise<void> {
  const said = JSON.stringify([
    check.day,
    check.finding,
    check.rows.map((row) => [row.sentence, row.onHand]),
  ]);
  if (said === lastKept) return;
  await sayWeeklyCheck(db, check, now);
  lastKept = said;
}
