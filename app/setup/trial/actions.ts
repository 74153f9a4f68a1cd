"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { database } from "#prisma/client";
import { shopOf } from "#prisma/records/shop";
import { type FormState, problemsOf, refused, typedValues } from "../../_parts/form-state";
import { saveTried } from "./save-tried";
import { trialForm } from "./trial-form";

/** Makes tried settings the shop's own. */
export async function keepTried(before: FormState, form: FormData): Promise<FormState> {
  const read = trialForm.safeParse(typedValues(form));
  if (!read.success) return refused(before, form, problemsOf(read.error));
  const db = await database();
  const shop = await shopOf(db);
  if (shop === null) redirect("/setup");
  await saveTried(db, shop, read.data);
  revalidatePath("/", "layout");
  redirect("/setup/trial?kept=yes");
}
