"use server";

import { revalidatePath } from "next/cache";
import { saveCartonSettings, setUseFirst } from "#prisma/records/carton-terms";
import { done, type FormState, problemsOf, refused, typedValues } from "../_parts/form-state";
import { shopNow } from "../_parts/shop-now";
import { cartonSettingsForm } from "./settings-form";

/** Says of a carton whether Pack offers it before others that would do. */
export async function sayUseFirst(
  cartonId: string,
  useFirst: boolean,
  before: FormState,
  form: FormData,
): Promise<FormState> {
  const { db } = await shopNow();
  if (!(await setUseFirst(db, cartonId, useFirst))) {
    return refused(before, form, { "": "This carton is not on the shelf any more: load the page again." });
  }
  revalidatePath("/", "layout");
  return done(before, useFirst ? "Pack offers it first." : "Pack takes it as usual.");
}

/** Keeps how the shop judges its cartons. */
export async function keepCartonSettings(before: FormState, form: FormData): Promise<FormState> {
  const { db, shop } = await shopNow();
  const read = cartonSettingsForm(shop.measures, shop.minorDigits).safeParse(typedValues(form));
  if (!read.success) return refused(before, form, problemsOf(read.error));
  await saveCartonSettings(db, read.data);
  revalidatePath("/", "layout");
  return done(before, "Saved.");
}
