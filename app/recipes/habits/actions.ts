"use server";

import { revalidatePath } from "next/cache";
import { habitsOf, saveHabits } from "#prisma/records/habits";
import { done, type FormState, problemsOf, refused, typedValues } from "../../_parts/form-state";
import { shopNow } from "../../_parts/shop-now";
import { habitsForm } from "./habits-form";

/** Keeps how the shop packs. Cards that it has stay as they are; drafts go by it from now on. */
export async function keepHabits(before: FormState, form: FormData): Promise<FormState> {
  const { db, shop } = await shopNow();
  const read = habitsForm(await habitsOf(db), shop.measures).safeParse(typedValues(form));
  if (!read.success) return refused(before, form, problemsOf(read.error));
  await saveHabits(db, read.data);
  revalidatePath("/recipes", "layout");
  return done(before, "Kept. Drafts go by it from now on; your cards stay as they are.");
}
