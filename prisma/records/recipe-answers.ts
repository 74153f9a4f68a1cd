import { type Amount, amount } from "#lib/units/amount";
import { type Day, day } from "#lib/units/day";
import { type Database, inTransaction, type Transaction } from "../client";
import type { RecipeAnswerModel } from "../generated/models/RecipeAnswer";
import type { Recorder } from "./ledger";

/** What a seller can say to a proposal of the counts. */
export const ANSWERS = ["yes", "no", "later"] as const;

/** What the seller said when the counts spoke against a card. */
export type RecipeAnswer = {
  readonly id: string;
  readonly supplyId: string;
  /** steps that were asked about, as they were then */
  readonly stepIds: readonly string[];
  readonly answeredOn: Day;
  readonly answer: (typeof ANSWERS)[number];
  readonly says: Amount;
  readonly about: Amount;
  /** counts that the proposal rested on */
  readonly counts: number;
};

/** Answers so far, the oldest first; an answer given after `until` is not among them. */
export async function recipeAnswersOf(db: Database, until: Day): Promise<RecipeAnswer[]> {
  const rows = await db.recipeAnswer.findMany({
    where: { answeredOn: { lte: until } },
    orderBy: [{ recordedAt: "asc" }, { id: "asc" }],
  });
  return rows.map(answerFrom);
}

/** The answer with this id, or null. */
export async function recipeAnswerWith(db: Database, id: string): Promise<RecipeAnswer | null> {
  const row = await db.recipeAnswer.findUnique({ where: { id } });
  return row === null ? null : answerFrom(row);
}

function answerFrom(row: RecipeAnswerModel): RecipeAnswer {
  const answer = ANSWERS.find((each) => each === row.answer);
  if (answer === undefined) throw new Error(`The database holds “${row.answer}” as an answer about a card`);
  return {
    id: row.id,
    supplyId: row.supplyId,
    stepIds: row.stepIds.split("\n"),
    answeredOn: day(row.answeredOn),
    answer,
    says: amount(Number(row.saysAmount)),
    about: amount(Number(row.aboutAmount)),
    counts: row.counts,
  };
}

/** Keeps an answer. One with the same id is the same answer, sent twice. */
export async function saveRecipeAnswer(db: Database, answer: RecipeAnswer, by: Recorder): Promise<void> {
  await inTransaction(db, (tx) => saveRecipeAnswerIn(tx, answer, by));
}

/** As `saveRecipeAnswer`, inside a transaction that the caller holds. */
export async function saveRecipeAnswerIn(tx: Transaction, answer: RecipeAnswer, by: Recorder): Promise<void> {
  const { id, stepIds, says, about, ...rest } = answer;
  await tx.recipeAnswer.upsert({
    where: { id },
    create: {
      id,
      ...rest,
      stepIds: stepIds.join("\n"),
      saysAmount: BigInt(says),
      aboutAmount: BigInt(about),
      recordedAt: by.now,
      recordedBy: by.device,
    },
    update: {},
  });
}
