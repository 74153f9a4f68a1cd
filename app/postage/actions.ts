"use server";

import { randomUUID } from "node:crypto";
import { revalidatePath } from "next/cache";
import { rateCardsOf, retireRateCard, saveRateCard } from "#prisma/records/rate-cards";
import { zonesOf } from "#prisma/records/zones";
import { done, type FormState, problemsOf, refused, typedValues } from "../_parts/form-state";
import { shopNow } from "../_parts/shop-now";
import { overlapProblem } from "./overlap-problem";
import { rateCardForm } from "./rate-card-form";

/** Adds a rate card, or saves the changes of the one with this id. */
export async function keepRateCard(id: string | null, before: FormState, form: FormData): Promise<FormState> {
  const { db, shop } = await shopNow();
  const read = rateCardForm(shop, await zonesOf(db)).safeParse(typedValues(form));
  if (!read.success) return refused(before, form, problemsOf(read.error));
  const card = { id: id ?? randomUUID(), ...read.data };
  const overlap = overlapProblem(card, await rateCardsOf(db, shop));
  if (overlap !== null) return refused(before, form, { validFrom: overlap });
  await saveRateCard(db, card);
  revalidatePath("/", "layout");
  return done(before, id === null ? `The prices of ${card.service} are kept.` : "The card is saved.");
}

/** Takes a rate card out of use. */
export async function dropRateCard(id: string, before: FormState): Promise<FormState> {
  const { db } = await shopNow();
  await retireRateCard(db, id);
  revalidatePath("/", "layout");
  return done(before, "Taken off.");
}
