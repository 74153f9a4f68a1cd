"use server";

import { randomUUID } from "node:crypto";
import { revalidatePath } from "next/cache";
import { retireSubstitute, saveSubstitute } from "#prisma/records/substitutes";
import { suppliesOf } from "#prisma/records/supplies";
import { done, type FormState, problemsOf, refused, typedValues } from "../../_parts/form-state";
import { shopNow } from "../../_parts/shop-now";
import { standInChoice, standInForm } from "./stand-in-form";

/** Keeps a rule for what stands in for a supply. */
export async function keepStandIn(supplyId: string, before: FormState, form: FormData): Promise<FormState> {
  const { db, shop } = await shopNow();
  const supplies = await suppliesOf(db);
  const typed = typedValues(form);
  const choice = standInChoice.safeParse(typed);
  if (!choice.success) return refused(before, form, problemsOf(choice.error));
  const supply = supplies.find(({ id }) => id === supplyId);
  const standIn = supplies.find(({ id }) => id === choice.data.standInId);
  if (supply === undefined || standIn === undefined || supply.id === standIn.id) {
    return refused(before, form, {
      standInId: "This supply is out of use meanwhile. Choose another one of the list.",
    });
  }
  const read = standInForm(supply, standIn, shop.measures).safeParse(typed);
  if (!read.success) return refused(before, form, problemsOf(read.error));
  const { amount, insteadOf, job, note } = read.data;
  await saveSubstitute(db, {
    id: randomUUID(),
    supplyId,
    standInId: standIn.id,
    job,
    amount: amount.amount,
    insteadOf: insteadOf.amount,
    note,
  });
  revalidatePath("/", "layout");
  return done(before, `${standIn.name} stands in for ${supply.name} from now on.`);
}

/** Takes a rule off. */
export async function dropStandIn(id: string, before: FormState): Promise<FormState> {
  const { db } = await shopNow();
  await retireSubstitute(db, id);
  revalidatePath("/", "layout");
  return done(before, "Taken off.");
}
