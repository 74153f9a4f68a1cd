"use server";

import { randomUUID } from "node:crypto";
import { revalidatePath } from "next/cache";
import { itemTypesOf } from "#prisma/records/item-types";
import { plannedEventsOf, removePlannedEvent, savePlannedEvent } from "#prisma/records/planned-events";
import { done, type FormState, problemsOf, refused, typedValues } from "../../_parts/form-state";
import { shopNow } from "../../_parts/shop-now";
import { eventForm } from "./event-form";

/** Plans an event, or saves the changes of the one with this id. */
export async function keepEvent(id: string | null, before: FormState, form: FormData): Promise<FormState> {
  const { db } = await shopNow();
  const itemTypes = await itemTypesOf(db, { retired: true });
  const read = eventForm(new Set(itemTypes.map((itemType) => itemType.id))).safeParse(typedValues(form));
  if (!read.success) return refused(before, form, problemsOf(read.error));
  const known = (await plannedEventsOf(db)).some((event) => event.id === id);
  if (id !== null && !known) {
    return refused(before, form, {
      "": "This event was taken off meanwhile. To have it after all, plan it anew at the foot of the page.",
    });
  }
  await savePlannedEvent(db, { id: id ?? randomUUID(), ...read.data });
  revalidatePath("/", "layout");
  return done(before, id === null ? `${read.data.name} is planned.` : "The event is saved.");
}

/** Takes an event off the calendar. */
export async function dropEvent(id: string, before: FormState): Promise<FormState> {
  const { db } = await shopNow();
  await removePlannedEvent(db, id);
  revalidatePath("/", "layout");
  return done(before, "Taken off.");
}
