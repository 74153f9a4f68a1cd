"use server";

import { revalidatePath } from "next/cache";
import { saveZone, zonesOf } from "#prisma/records/zones";
import { done, type FormState, problemsOf, refused, typedValues } from "../_parts/form-state";
import { shopNow } from "../_parts/shop-now";
import { zoneForm } from "../setup/calendar-forms";

/** Gives a zone another name; its parcels and its prices stay with it. */
export async function renameZone(id: string, before: FormState, form: FormData): Promise<FormState> {
  const read = zoneForm.safeParse(typedValues(form));
  if (!read.success) return refused(before, form, problemsOf(read.error));
  const { db } = await shopNow();
  const zones = await zonesOf(db);
  const { name } = read.data;
  const isTaken = zones.some((each) => each.id !== id && each.name.toLowerCase() === name.toLowerCase());
  if (isTaken) return refused(before, form, { name: `Another zone is called ${name}. Choose another name.` });
  const zone = zones.find((each) => each.id === id);
  if (zone === undefined) return refused(before, form, { "": "This zone was taken off meanwhile." });
  await saveZone(db, { ...zone, name });
  revalidatePath("/", "layout");
  return done(before, "Renamed.");
}
