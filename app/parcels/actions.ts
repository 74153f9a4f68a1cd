"use server";

import { revalidatePath } from "next/cache";
import { day, isDay } from "#lib/units/day";
import { markBroken, markPosted, returnParcel, voidParcel } from "#prisma/records/parcel-corrections";
import { parcelOf } from "#prisma/records/parcel-lists";
import { suppliesOf } from "#prisma/records/supplies";
import { dayProblem } from "../_parts/day-problem";
import { done, type FormState, problemsOf, refused, typedValues } from "../_parts/form-state";
import { recorderOf, shopNow } from "../_parts/shop-now";
import { brokenForm, postedForm, returnedForm, voidForm } from "./parcel-change-form";
import { returnedLines } from "./returned-lines";
import { stillOut } from "./still-out";

const NO_SUCH_PARCEL = { "": "There is no such parcel any more. Look for it in the list of parcels." };
const NO_SUCH_DAY = { on: "That is no day of the calendar." };

/** Voids a parcel: its use is taken back, the parcel stays to be seen. */
export async function voidAction(before: FormState, form: FormData): Promise<FormState> {
  const read = voidForm.safeParse(typedValues(form));
  if (!read.success) return refused(before, form, problemsOf(read.error));
  const { db, now } = await shopNow();
  const outcome = await voidParcel(db, read.data.parcelId, read.data.reason, await recorderOf(now));
  if (outcome.kind === "not-found") return refused(before, form, NO_SUCH_PARCEL);
  revalidatePath("/", "layout");
  return done(
    before,
    outcome.kind === "voided" ? "Void: its materials are back in stock." : "It was void already.",
  );
}

/** Marks a parcel as broken in the post. */
export async function brokenAction(before: FormState, form: FormData): Promise<FormState> {
  const read = brokenForm.safeParse(typedValues(form));
  if (!read.success) return refused(before, form, problemsOf(read.error));
  if (!isDay(read.data.on)) return refused(before, form, NO_SUCH_DAY);
  const { db, today } = await shopNow();
  const parcel = await parcelOf(db, read.data.parcelId);
  if (parcel === null) return refused(before, form, NO_SUCH_PARCEL);
  const problem = dayProblem(read.data.on, today, day(parcel.packedOn));
  if (problem !== null) return refused(before, form, { on: problem });
  const { on, cause, note } = read.data;
  const outcome = await markBroken(db, read.data.parcelId, { on, cause, note });
  if (outcome.kind === "not-found") return refused(before, form, NO_SUCH_PARCEL);
  revalidatePath("/", "layout");
  return done(before, "Marked as broken. Is its recipe still right? The link stands above.");
}

/** Marks a parcel as come back, with what goes back on the shelf. */
export async function returnedAction(before: FormState, form: FormData): Promise<FormState> {
  const typed = typedValues(form);
  const read = returnedForm.safeParse(typed);
  if (!read.success) return refused(before, form, problemsOf(read.error));
  if (!isDay(read.data.on)) return refused(before, form, NO_SUCH_DAY);
  const { db, shop, now, today } = await shopNow();
  const parcel = await parcelOf(db, read.data.parcelId);
  if (parcel === null) return refused(before, form, NO_SUCH_PARCEL);
  const problem = dayProblem(read.data.on, today, day(parcel.packedOn));
  if (problem !== null) return refused(before, form, { on: problem });
  const supplies = await suppliesOf(db, { retired: true });
  const back = returnedLines(typed, supplies, shop.measures, stillOut(parcel.movements));
  if (Object.keys(back.problems).length > 0) return refused(before, form, back.problems);
  const on = read.data.on;
  const outcome = await returnParcel(
    db,
    read.data.parcelId,
    { on, lines: back.lines },
    await recorderOf(now),
  );
  if (outcome.kind === "not-found") return refused(before, form, NO_SUCH_PARCEL);
  revalidatePath("/", "layout");
  return done(before, "Noted. What came back is on the shelf again.");
}

/** Notes the day posted. */
export async function postedAction(before: FormState, form: FormData): Promise<FormState> {
  const read = postedForm.safeParse(typedValues(form));
  if (!read.success) return refused(before, form, problemsOf(read.error));
  if (!isDay(read.data.on)) return refused(before, form, NO_SUCH_DAY);
  const { db, today } = await shopNow();
  const parcel = await parcelOf(db, read.data.parcelId);
  if (parcel === null) return refused(before, form, NO_SUCH_PARCEL);
  const problem = dayProblem(read.data.on, today, day(parcel.packedOn));
  if (problem !== null) return refused(before, form, { on: problem });
  const outcome = await markPosted(db, read.data.parcelId, read.data.on);
  if (outcome.kind === "not-found") return refused(before, form, NO_SUCH_PARCEL);
  revalidatePath("/", "layout");
  return done(before, "Marked as posted.");
}
