import { stockValue } from "#lib/replenishment/stock-value";
import { AMOUNT_PER_UNIT } from "#lib/units/amount";
import { BALANCING, NEW_ENTRIES, PARCELS, ROLL_UPS, STALE_FATES, TAKE_BACK, USE } from "./commit-statements";
import type { ImportConnection } from "./import-connection";
import { importRunOf, moveImport } from "./import-runs";

/** What came of a commit. */
export type CommitOutcome =
  | { readonly kind: "committed"; readonly newParcels: number; readonly changedParcels: number }
  /** Parcels of the run were changed since the preview: it is back at uploaded, to be worked out again. */
  | { readonly kind: "stale" }
  | { readonly kind: "not-ready" };

/**
 * Books a run that waits for its yes: all of it or nothing, in one transaction that ends by marking the
 * run as committed. A program that is killed at any moment leaves either the old books or the new ones.
 *
 * @param db the import's connection
 * @param runId the run
 * @param by who imports, and when
 * @returns what was booked, or why nothing was
 */
export function commitImport(
  db: ImportConnection,
  runId: string,
  by: { readonly device: string; readonly now: string },
): CommitOutcome {
  const run = importRunOf(db, runId);
  if (run === null || !claimCommit(db, runId)) return { kind: "not-ready" };
  db.function("stock_value", { deterministic: true, safeIntegers: true }, usedValue);
  const outcome = db.transaction((): CommitOutcome => {
    if (importRunOf(db, runId)?.state !== "committing") return { kind: "not-ready" };
    const stale = db.prepare<unknown[], { stale: number }>(STALE_FATES).get({ runId, source: run.source });
    if (stale?.stale !== 0) return { kind: "stale" };
    book(db, { runId, source: run.source, ...by });
    db.prepare(`UPDATE "ImportRun" SET "state" = 'committed', "finishedAt" = ? WHERE "id" = ?`).run(
      by.now,
      runId,
    );
    return { kind: "committed", newParcels: run.newParcels, changedParcels: run.changedParcels };
  });
  try {
    const done = outcome.immediate();
    if (done.kind === "stale") moveImport(db, runId, ["committing"], "uploaded");
    return done;
  } catch (error) {
    moveImport(db, runId, ["committing"], "ready");
    throw error;
  }
}

/**
 * Marks a run that waits for its yes as being booked.
 *
 * @returns false where the run waits for no yes
 */
export function claimCommit(db: ImportConnection, runId: string): boolean {
  const claimed = db
    .prepare(
      `UPDATE "ImportRun" SET "state" = 'committing' WHERE "id" = ? AND "state" IN ('ready', 'committing')`,
    )
    .run(runId);
  return claimed.changes === 1;
}

function book(
  db: ImportConnection,
  run: { readonly runId: string; readonly source: string; readonly device: string; readonly now: string },
): void {
  const before =
    db.prepare<[], { id: number }>(`SELECT COALESCE(MAX("id"), 0) AS "id" FROM "Movement"`).get()?.id ?? 0;
  const values = { ...run, before, wholeShare: AMOUNT_PER_UNIT };
  for (const statement of [...NEW_ENTRIES, ...TAKE_BACK, ...PARCELS, USE, BALANCING, ...ROLL_UPS]) {
    db.prepare(statement).run(values);
  }
}

function usedValue(amount: unknown, costValue: unknown, costAmount: unknown): bigint | null {
  if (typeof amount !== "bigint" || typeof costValue !== "bigint" || typeof costAmount !== "bigint")
    return null;
  return stockValue(amount, { value: costValue, amount: costAmount });
}
