import { stockValue } from "#lib/replenishment/stock-value";
import { AMOUNT_PER_UNIT } from "#lib/units/amount";
import {
  BALANCING,
  BOOKED,
  KEEP_CHANGED_SINCE,
  NEW_ENTRIES,
  PARCELS,
  PART_END,
  ROLL_UPS,
  STALE_FATES,
  TAKE_BACK,
  USE,
} from "./commit-statements";
import type { ImportConnection } from "./import-connection";
import { importRunOf, moveImport } from "./import-runs";

/** What came of a commit. */
export type CommitOutcome =
  | { readonly kind: "committed"; readonly newParcels: number; readonly changedParcels: number }
  /** Parcels of the run were changed since the preview: it is back at uploaded, to be worked out again. */
  | { readonly kind: "stale" }
  | { readonly kind: "not-ready" };

/** Who imports, when, and how the parts are spaced. */
export type CommitTerms = {
  readonly device: string;
  readonly now: string;
  /** parcels booked in one transaction */
  readonly partSize?: number;
  /** awaited between two parts, so that parcels can be recorded */
  readonly pause: () => Promise<void>;
};

/** Booked in about a tenth of a second: a packer does not notice the wait. */
const PART_SIZE = 1000;

type Part = {
  readonly runId: string;
  readonly source: string;
  readonly device: string;
  readonly now: string;
  readonly after: string;
};

/**
 * Books a run that waits for its yes, or goes on with one whose commit was stopped. Parcels are booked in
 * parts of a thousand, each with movements and roll-ups in one transaction, so that recording goes on
 * beside a long file; most files are a single part. Once the first part is booked the rest follows: a
 * program that was killed in between goes on at its next start, before it answers anyone.
 *
 * @param db the import's connection
 * @param runId the run
 * @param terms who imports, when, and how the parts are spaced
 * @returns what was booked, or why nothing was
 */
export async function commitImport(
  db: ImportConnection,
  runId: string,
  terms: CommitTerms,
): Promise<CommitOutcome> {
  const run = importRunOf(db, runId);
  if (run === null || !claimCommit(db, runId)) return { kind: "not-ready" };
  db.function("stock_value", { deterministic: true, safeIntegers: true }, usedValue);
  const { device, now, partSize = PART_SIZE } = terms;
  const part = { runId, source: run.source, device, now };
  let step = bookPart(db, { ...part, after: "" }, partSize);
  while (step.kind === "more") {
    await terms.pause();
    step = bookPart(db, { ...part, after: step.until }, partSize);
  }
  if (step.kind !== "done") return step;
  return { kind: "committed", newParcels: run.newParcels, changedParcels: run.changedParcels };
}

type PartOutcome =
  | { readonly kind: "more"; readonly until: string }
  | { readonly kind: "done" }
  | Exclude<CommitOutcome, { kind: "committed" }>;

function bookPart(db: ImportConnection, part: Part, size: number): PartOutcome {
  const work = db.transaction((): PartOutcome => {
    if (importRunOf(db, part.runId)?.state !== "committing") return { kind: "not-ready" };
    const isFirst = !hasBooked(db, part.runId);
    if (isFirst && isStale(db, part)) {
      moveImport(db, part.runId, ["committing"], "uploaded");
      return { kind: "stale" };
    }
    if (isFirst) for (const statement of NEW_ENTRIES) db.prepare(statement).run(part);
    const until = partEnd(db, part, size);
    if (until === null) {
      moveImport(db, part.runId, ["committing"], "committed", part.now);
      return { kind: "done" };
    }
    book(db, { ...part, until });
    if (partEnd(db, { ...part, after: until }, 1) !== null) return { kind: "more", until };
    moveImport(db, part.runId, ["committing"], "committed", part.now);
    return { kind: "done" };
  });
  try {
    return work.immediate();
  } catch (error) {
    // Nothing of it is booked: the seller may say yes again. Else the next start goes on.
    if (!hasBooked(db, part.runId)) moveImport(db, part.runId, ["committing"], "ready");
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

/** Whether a first part of the run is in the books already. */
export function hasBooked(db: ImportConnection, runId: string): boolean {
  const found = db
    .prepare<[string], { one: number }>(
      `SELECT 1 AS "one" FROM "StagedParcel" WHERE "runId" = ? AND "fate" = 'booked' LIMIT 1`,
    )
    .get(runId);
  return found !== undefined;
}

function isStale(db: ImportConnection, part: Part): boolean {
  return db.prepare<[Part], { stale: number }>(STALE_FATES).get(part)?.stale !== 0;
}

function partEnd(db: ImportConnection, part: Part, size: number): string | null {
  return (
    db.prepare<[Part & { size: number }], { until: string | null }>(PART_END).get({ ...part, size })?.until ??
    null
  );
}

function book(db: ImportConnection, part: Part & { readonly until: string }): void {
  const before =
    db.prepare<[], { id: number }>(`SELECT COALESCE(MAX("id"), 0) AS "id" FROM "Movement"`).get()?.id ?? 0;
  const values = { ...part, before, wholeShare: AMOUNT_PER_UNIT };
  const statements = [KEEP_CHANGED_SINCE, ...TAKE_BACK, ...PARCELS, USE, BALANCING, ...ROLL_UPS, BOOKED];
  for (const statement of statements) db.prepare(statement).run(values);
}

function usedValue(amount: unknown, costValue: unknown, costAmount: unknown): bigint | null {
  if (typeof amount !== "bigint" || typeof costValue !== "bigint" || typeof costAmount !== "bigint")
    return null;
  return stockValue(amount, { value: costValue, amount: costAmount });
}
