import { createHash } from "node:crypto";
import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";
import type { PlanAnswer } from "#lib/purchasing/plan/purchase-plan";
import { type Database, inTransaction } from "../client";

/** A plan as it was worked out for a question. */
export type KeptPlan = { readonly answer: PlanAnswer; readonly madeAt: string };

/** Rises when plans are made in another way: older ones are then made anew. */
const EDITION = 2;
/** Plans of other questions that are kept, for going back and forth between aims. */
const KEPT = 40;

/**
 * Key of a question: the same for the same question.
 *
 * @param question all that a plan depends on
 * @returns SHA-256, hexadecimal
 */
export function questionHash(question: PlanQuestion): string {
  const text = JSON.stringify([EDITION, question], (_, value) => (value === Infinity ? "endless" : value));
  return createHash("sha256").update(text).digest("hex");
}

/** The plan that was worked out for a question, or null. */
export async function planOf(db: Database, hash: string): Promise<KeptPlan | null> {
  const row = await db.purchasePlan.findUnique({ where: { questionHash: hash } });
  return row === null ? null : { answer: JSON.parse(row.answer) as PlanAnswer, madeAt: row.madeAt };
}

/** Keeps a plan for its question; the oldest of many go. */
export async function keepPlan(
  db: Database,
  plan: { readonly hash: string; readonly day: string; readonly answer: PlanAnswer; readonly madeAt: string },
): Promise<void> {
  const { hash, day, madeAt } = plan;
  const data = { day, madeAt, answer: JSON.stringify(plan.answer) };
  await inTransaction(db, async (tx) => {
    await tx.purchasePlan.upsert({
      where: { questionHash: hash },
      create: { questionHash: hash, ...data },
      update: data,
    });
    const old = await tx.purchasePlan.findMany({
      orderBy: { madeAt: "desc" },
      skip: KEPT,
      select: { questionHash: true },
    });
    if (old.length > 0) {
      await tx.purchasePlan.deleteMany({
        where: { questionHash: { in: old.map((row) => row.questionHash) } },
      });
    }
  });
}
