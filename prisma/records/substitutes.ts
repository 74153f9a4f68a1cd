import type { WrapJob } from "#lib/packing/substitution/substitution-rule";
import { type Amount, amount } from "#lib/units/amount";
import { type Database, inTransaction } from "../client";

/** What a stand-in can do for a piece. */
export const SUBSTITUTE_JOBS = [
  "surface",
  "shock",
  "brace",
  "bind",
  "fill",
  "seal",
] as const satisfies readonly WrapJob[];

/** The shop's own rule: `amount` of the stand-in does the job of `insteadOf` of the supply. */
export type Substitute = {
  readonly id: string;
  readonly supplyId: string;
  readonly standInId: string;
  readonly job: WrapJob;
  readonly amount: Amount;
  readonly insteadOf: Amount;
  readonly note: string | null;
};

/** The shop's rules between supplies in use, in the order in which they were made. */
export async function substitutesOf(db: Database): Promise<Substitute[]> {
  const rows = await db.substitute.findMany({
    where: { retired: false, supply: { retired: false }, standIn: { retired: false } },
    orderBy: [{ position: "asc" }, { id: "asc" }],
  });
  return rows.map((row) => ({
    id: row.id,
    supplyId: row.supplyId,
    standInId: row.standInId,
    job: jobOf(row.job),
    amount: amount(Number(row.amount)),
    insteadOf: amount(Number(row.insteadOf)),
    note: row.note,
  }));
}

function jobOf(text: string): WrapJob {
  const job = SUBSTITUTE_JOBS.find((each) => each === text);
  if (job === undefined) throw new Error(`The database holds “${text}” as what a stand-in does`);
  return job;
}

/** Adds a rule; one for the same supplies and job takes its place. */
export async function saveSubstitute(db: Database, rule: Substitute): Promise<void> {
  const { id, supplyId, standInId, job, ...rest } = rule;
  await inTransaction(db, async (tx) => {
    const position = await tx.substitute.count();
    const data = { ...rest, amount: BigInt(rule.amount), insteadOf: BigInt(rule.insteadOf), retired: false };
    await tx.substitute.upsert({
      where: { supplyId_standInId_job: { supplyId, standInId, job } },
      create: { id, supplyId, standInId, job, position, ...data },
      update: data,
    });
  });
}

/** Takes a rule out of use. */
export async function retireSubstitute(db: Database, id: string): Promise<void> {
  await inTransaction(db, (tx) => tx.substitute.updateMany({ where: { id }, data: { retired: true } }));
}
