import { createHash } from "node:crypto";
import type { CurvePoint } from "#lib/cartons/range/range-curve";
import type { RangeSteps } from "#lib/cartons/range/range-steps";
import type { EarningSize } from "#lib/cartons/range/size-earns";
import { type Database, inTransaction } from "../client";

/** The ranges that were worked out for a question, as far as they are. */
export type KeptRange = {
  /** for 1, 2, … sizes */
  readonly points: readonly CurvePoint[];
  /** how many are wanted */
  readonly most: number;
  /** what today's sizes cost, 1/10,000 minor units, and the parcels that fit none of them; null until it is known */
  readonly today: { readonly value: number; readonly unpackedParcels: number } | null;
  /** for each of the points */
  readonly earns: readonly (readonly EarningSize[])[];
  readonly steps: readonly RangeSteps[];
  /** parcels of which it was neither found nor disproved that they fit, by candidate */
  readonly notProven: readonly number[];
  /** why it ended early; null where it did not */
  readonly failed: string | null;
};

/** Rises when ranges are made in another way. */
const EDITION = 1;
const KEPT = 10;

/**
 * Key of a question: the same for the same question.
 *
 * @param question all that a range depends on, as plain values
 * @returns SHA-256, hexadecimal
 */
export function rangeHash(question: unknown): string {
  return createHash("sha256")
    .update(
      JSON.stringify([EDITION, question], (_, value) => (typeof value === "bigint" ? `${value}n` : value)),
    )
    .digest("hex");
}

/** The ranges that were worked out for a question, or null. */
export async function rangeKept(
  db: Database,
  hash: string,
): Promise<{ readonly range: KeptRange; readonly madeAt: string } | null> {
  const row = await db.cartonRange.findUnique({ where: { questionHash: hash } });
  return row === null ? null : { range: JSON.parse(row.answer) as KeptRange, madeAt: row.madeAt };
}

/** Keeps what was worked out so far; the oldest of many go. */
export async function keepRange(db: Database, hash: string, range: KeptRange, madeAt: string): Promise<void> {
  const data = { madeAt, answer: JSON.stringify(range) };
  await inTransaction(db, async (tx) => {
    await tx.cartonRange.upsert({
      where: { questionHash: hash },
      create: { questionHash: hash, ...data },
      update: data,
    });
    const old = await tx.cartonRange.findMany({
      orderBy: { madeAt: "desc" },
      skip: KEPT,
      select: { questionHash: true },
    });
    if (old.length > 0) {
      await tx.cartonRange.deleteMany({
        where: { questionHash: { in: old.map(({ questionHash }) => questionHash) } },
      });
    }
  });
}
