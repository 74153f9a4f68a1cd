"use server";

import { randomUUID } from "node:crypto";
import { revalidatePath } from "next/cache";
import { removeClosedSpan, saveClosedSpan } from "#prisma/records/closed-spans";
import { saveZone, zonesOf } from "#prisma/records/zones";
import { done, type FormState, problemsOf, refused, typedValues } from "../_parts/form-state";
import { newSlug } from "../_parts/new-slug";
import { shopNow } from "../_parts/shop-now";
import { closedSpanForm, zoneForm } from "./calendar-forms";

/** Adds days on which the shop packs nothing. */
export async function addClosedSpan(before: FormState, form: FormData): Promise<FormState> {
  const read = closedSpanForm.safeParse(typedValues(form));
  if (!read.success) return refused(before, form, problemsOf(read.error));
  const { db } = await shopNow();
  await saveClosedSpan(db, { id: randomUUID(), ...read.data });
  revalidatePath("/", "layout");
  return done(before, "The closed days are saved.");
}

/** Takes closed days off the calendar. */
export async function dropClosedSpan(id: string, before: FormState): Promise<FormState> {
  const { db } = await shopNow();
  await removeClosedSpan(db, id);
  revalidatePath("/", "layout");
  return done(before, "Taken off.");
}

/** Adds a zone. */
export async function addZone(before: FormState, form: FormData): Promise<FormState> {
  const read = zoneForm.safeParse(typedValues(form));
  if (!read.success) return refused(before, form, problemsOf(read.error));
  const { db } = await shopNow();
  const zones = await zonesOf(db);
  const taken = await db.zone.findMany({ select: { id: true } });
  const id = newSlug(
    read.data.name,
    taken.map((zone) => zone.id),
  );
  await saveZone(db, { id, name: read.data.name, retired: false, position: zones.length });
  revalidatePath("/", "layout");
  return done(before, `${read.data.name} is added.`);
}

/** Takes a zone out of the lists; parcels that went there keep it. */
export async function retireZone(id: string, before: FormState): Promise<FormState> {
  const { db } = await shopNow();
  const zone = (await zonesOf(db)).find((row) => row.id === id);
  if (zone !== undefined) await saveZone(db, { ...zone, retired: true });
  revalidatePath("/", "layout");
  return done(before, "Taken off.");
}
