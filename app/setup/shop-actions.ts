"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { database } from "#prisma/client";
import { saveShop, shopOf } from "#prisma/records/shop";
import { done, type FormState, problemsOf, refused, typedValues } from "../_parts/form-state";
import { minorDigitsOf, shopForm } from "./shop-form";

/** Saves the shop; a new shop goes on to its first recipes. */
export async function keepShop(before: FormState, form: FormData): Promise<FormState> {
  const read = shopForm.safeParse(typedValues(form));
  if (!read.success) return refused(before, form, problemsOf(read.error));
  const db = await database();
  const isNew = (await shopOf(db)) === null;
  await saveShop(db, { ...read.data, minorDigits: minorDigitsOf(read.data.currency) });
  revalidatePath("/", "layout");
  if (isNew) redirect("/recipes/start");
  return done(before, "The shop is saved.");
}
