"use server";

import { randomUUID } from "node:crypto";
import { revalidatePath } from "next/cache";
import { putServiceFirst, rateCardsOf, retireRateCard, saveRateCards } from "#prisma/records/rate-cards";
import { zonesOf } from "#prisma/records/zones";
import { done, type FormState, problemsOf, refused, typedValues } from "../_parts/form-state";
import { shopNow } from "../_parts/shop-now";
import { importedCards } from "./imported-cards";
import { keptOverlap } from "./kept-overlap";
import { rateCardForm } from "./rate-card-form";

/** Adds a rate card, or saves the changes of the one with this id. */
export async function keepRateCard(id: string | null, before: FormState, form: FormData): Promise<FormState> {
  const { db, shop } = await shopNow();
  const typed = typedValues(form);
  const read = rateCardForm(shop, await zonesOf(db)).safeParse(typed);
  if (!read.success) return refused(before, form, problemsOf(read.error));
  const card = { id: id ?? randomUUID(), ...read.data };
  const overlap = keptOverlap(card, await rateCardsOf(db, shop), typed["endBefore"] === "yes");
  if (overlap.kind === "overlap") {
    return refused(before, form, {
      validFrom: overlap.words,
      ...(overlap.canEnd ? { endBefore: "Tick this to do so." } : {}),
    });
  }
  await saveRateCards(db, [...overlap.ended, card], shop);
  revalidatePath("/", "layout");
  const { service } = card.card;
  return done(before, id === null ? `The prices of ${service} are kept.` : "The card is saved.");
}

/** Keeps all cards of a CSV file, or none of them. */
export async function importRateCards(before: FormState, form: FormData): Promise<FormState> {
  const { db, shop } = await shopNow();
  const [zones, kept] = await Promise.all([zonesOf(db), rateCardsOf(db, shop)]);
  const read = await importedCards(form, { shop, zones, kept });
  if (read.kind === "unreadable") return refused(before, form, { [read.field]: read.words });
  await saveRateCards(db, read.cards, shop);
  revalidatePath("/", "layout");
  return done(before, read.words);
}

/** Makes a service the one that Pack and Cartons reckon with. */
export async function putFirst(service: string, before: FormState): Promise<FormState> {
  const { db } = await shopNow();
  await putServiceFirst(db, service);
  revalidatePath("/", "layout");
  return done(before, `${service} comes first.`);
}

/** Takes a rate card out of use. */
export async function dropRateCard(id: string, before: FormState): Promise<FormState> {
  const { db } = await shopNow();
  await retireRateCard(db, id);
  revalidatePath("/", "layout");
  return done(before, "Taken off.");
}
