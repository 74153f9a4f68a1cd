"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { z } from "zod";
import { type CushionStyle, recipeOn } from "#lib/packing/recipe-version";
import { recipesOf, saveRecipe } from "#prisma/records/recipes";
import { type FormState, problemsOf, refused, typedValues } from "../../../_parts/form-state";
import { shopNow } from "../../../_parts/shop-now";
import { dayText } from "../../../_parts/typed-fields";
import type { DraftQuery } from "./draft-choice";
import { keptDraft } from "./kept-draft";
import { readDraft } from "./read-draft";

type Of = { readonly itemTypeId: string; readonly style: CushionStyle; readonly query: DraftQuery };

const keepForm = z.object({ effectiveFrom: dayText });

/** Drafts the card once more and keeps it as a new version, from a day on. */
export async function keepDraft(
  { itemTypeId, style, query }: Of,
  before: FormState,
  form: FormData,
): Promise<FormState> {
  const now = await shopNow();
  const read = keepForm.safeParse(typedValues(form));
  if (!read.success) return refused(before, form, problemsOf(read.error));
  const { effectiveFrom } = read.data;
  const drafted = (await readDraft(now, itemTypeId, query))?.draftOf(style) ?? null;
  if (drafted?.kind !== "drafted") {
    return refused(before, form, {
      "": "The piece, a supply or a carton has changed meanwhile: load the page again and look at the draft.",
    });
  }
  const recipes = await recipesOf(now.db, { itemTypeIds: [itemTypeId] });
  const card = recipeOn(recipes, itemTypeId, style, effectiveFrom);
  const version = keptDraft(drafted.recipe, { itemTypeId, style, effectiveFrom }, card);
  const outcome = await saveRecipe(now.db, version, now.now);
  if (outcome.kind === "in-use") {
    return refused(before, form, {
      effectiveFrom: "Parcels were packed by the card of that day. Choose a later day.",
    });
  }
  revalidatePath("/", "layout");
  redirect(`/recipes/${itemTypeId}#${style}`);
}
