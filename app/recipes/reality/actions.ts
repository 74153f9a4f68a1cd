"use server";

import { randomUUID } from "node:crypto";
import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { amountAsTyped, parseAmount } from "#lib/units/amount-text";
import { cardEvidence } from "#prisma/records/card-evidence";
import { changeCard } from "#prisma/records/change-card";
import { type RecipeAnswer, recipeAnswerWith, saveRecipeAnswer } from "#prisma/records/recipe-answers";
import { type FormState, problemsOf, refused, typedValues } from "../../_parts/form-state";
import { recorderOf, shopNow } from "../../_parts/shop-now";
import { type Asked, answerForm, askedForm, foundProposal } from "./answer-form";
import { changeNote } from "./change-note";

const CHANGED_MEANWHILE =
  "The counts, the card or an answer have changed since this was shown: load the page again and look.";
const NOT_ONE_STEP =
  "The counts do not tell what this single step takes: change the card on its own form, where you can spread the amount.";

/** Keeps the seller's answer to a proposal; a yes writes the card's new version from today on. */
export async function answerProposal(asked: Asked, before: FormState, form: FormData): Promise<FormState> {
  const { db, shop, now, today } = await shopNow();
  const pressed = answerForm.safeParse(typedValues(form));
  if (!pressed.success) return refused(before, form, { "": problemsOf(pressed.error)["answer"] ?? "" });
  const read = askedForm.safeParse(asked);
  if (!read.success) return refused(before, form, { "": CHANGED_MEANWHILE });
  if ((await recipeAnswerWith(db, read.data.id)) !== null) return shown(read.data.id);
  const evidence = await cardEvidence(db, today);
  const found = foundProposal(evidence, read.data);
  if (found === null) return refused(before, form, { "": CHANGED_MEANWHILE });
  const { of, proposal } = found;
  const answer: RecipeAnswer = {
    id: read.data.id,
    supplyId: of.supply.id,
    stepIds: proposal.stepKeys,
    answeredOn: today,
    answer: pressed.data.answer,
    says: proposal.says,
    about: proposal.usesAbout,
    counts: proposal.counts,
  };
  const by = await recorderOf(now);
  if (answer.answer !== "yes") {
    await saveRecipeAnswer(db, answer, by);
    return shown(answer.id);
  }
  const [stepId = "", ...others] = proposal.stepKeys;
  const card = evidence.steps.get(stepId);
  const unit = of.supply.useUnit;
  const typed = parseAmount(amountAsTyped(proposal.usesAbout, unit), unit, shop.measures);
  if (card === undefined || others.length > 0 || typed.kind !== "amount" || typed.amount <= 0) {
    return refused(before, form, { "": NOT_ONE_STEP });
  }
  const change = {
    recipe: card.recipe,
    stepId,
    amount: typed.amount,
    typedValue: typed.typedValue,
    typedUnit: typed.typedUnit,
    note: changeNote(card, proposal, unit),
    newId: randomUUID(),
    newStepIds: card.recipe.steps.map(() => randomUUID()),
  };
  const outcome = await changeCard(db, change, answer, by);
  if (outcome.kind === "in-use") {
    return refused(before, form, {
      "": "Parcels were packed today by a version that holds from today: press it again tomorrow. Nothing was changed.",
    });
  }
  return shown(answer.id);
}

function shown(answerId: string): never {
  revalidatePath("/", "layout");
  redirect(`/recipes/reality?answered=${encodeURIComponent(answerId)}`);
}
