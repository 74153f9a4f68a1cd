"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { minorDigitsOf } from "#lib/units/minor-digits";
import { database } from "#prisma/client";
import { saveShop, shopOf } from "#prisma/records/shop";
import { done, type FormState, problemsOf, refused, typedValues } from "../_parts/form-state";
import { buyingTermsForm, termsOf } from "./buying-terms-form";
import { shopForm } from "./shop-form";

/** Saves the shop; a new shop goes on to its first recipes. */
export async function keepShop(before: FormState, form: FormData): Promise<FormState> {
  const typed = typedValues(form);
  const read = shopForm.safeParse(typed);
  if (!read.success) return refused(before, form, problemsOf(read.error));
  const { promise, ...basics } = read.data;
  const minorDigits = minorDigitsOf(basics.currency);
  const terms = buyingTermsForm(minorDigits, basics.measures, basics.coverWeeks).safeParse(typed);
  if (!terms.success) return refused(before, form, problemsOf(terms.error));
  const db = await database();
  const isNew = (await shopOf(db)) === null;
  const goal = { goal: promise.goal, servicePerMille: promise.perMille };
  await saveShop(db, { ...basics, ...goal, ...(isNew ? {} : termsOf(terms.data)), minorDigits });
  revalidatePath("/", "layout");
  if (isNew) redirect("/recipes/start");
  return done(before, "The shop is saved.");
}
