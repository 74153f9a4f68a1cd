import type { Amount } from "#lib/units/amount";
import type { Day } from "#lib/units/day";
import { type Database, inTransaction } from "../client";
import type { Recorder } from "./ledger";
import { type RecipeAnswer, saveRecipeAnswerIn } from "./recipe-answers";
import { type Recipe, saveRecipeIn } from "./recipes";

/** One step's new amount, with the card that holds. */
export type CardChange = {
  readonly recipe: Recipe;
  readonly stepId: string;
  readonly amount: Amount;
  readonly typedValue: string;
  readonly typedUnit: string;
  readonly note: string;
  /** ids of the new version and, in their order, of its steps */
  readonly newId: string;
  readonly newStepIds: readonly string[];
};

/**
 * Writes the version of a card in which one step takes another amount, together with the seller's "yes" that it follows
 * from: both or neither. It holds from the day of the answer; what was packed before keeps its own amounts.
 *
 * @param db the database
 * @param change the card that holds, and what is new in it
 * @param answer the "yes"
 * @param by who records, and when
 * @returns "in-use" where parcels already hold to a version of that very day: then nothing is written
 * @throws RangeError when the step is not of the card, or not each step has a new id
 */
export async function changeCard(
  db: Database,
  change: CardChange,
  answer: RecipeAnswer,
  by: Recorder,
): Promise<{ kind: "saved" } | { kind: "in-use"; effectiveFrom: string }> {
  const version = changedCard(change, answer.answeredOn);
  return inTransaction(db, async (tx) => {
    const outcome = await saveRecipeIn(tx, version, by.now);
    if (outcome.kind === "saved") await saveRecipeAnswerIn(tx, answer, by);
    return outcome;
  });
}

function changedCard(change: CardChange, effectiveFrom: Day): Recipe {
  const { recipe, stepId, newId, newStepIds, note, amount, typedValue, typedUnit } = change;
  if (!recipe.steps.some(({ id }) => id === stepId)) {
    throw new RangeError(`changeCard requires a step of the card, got ${stepId}`);
  }
  return {
    ...recipe,
    id: newId,
    effectiveFrom,
    note,
    steps: recipe.steps.map((step, at) => {
      const id = newStepIds[at];
      if (id === undefined) throw new RangeError("changeCard requires an id for each step");
      return { ...step, id, ...(step.id === stepId ? { amount, typedValue, typedUnit } : {}) };
    }),
  };
}
