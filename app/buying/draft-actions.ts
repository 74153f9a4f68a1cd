"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { z } from "zod";
import { promisedOn } from "#prisma/records/promised-on";
import { changeDraft, deleteDraft, draftPurchase, placeDraft } from "#prisma/records/purchase-drafts";
import { purchaseOf } from "#prisma/records/purchase-orders";
import { closuresOf, offersOf, suppliersOf } from "#prisma/records/suppliers";
import { dayProblem } from "../_parts/day-problem";
import { done, type FormState, problemsOf, refused, typedValues } from "../_parts/form-state";
import { recorderOf, shopNow } from "../_parts/shop-now";
import { dayText, neededText } from "../_parts/typed-fields";
import { readDraftForm } from "./draft-form";
import { offersForDraft } from "./offers-for-draft";

const NOT_DRAFT = {
  "": "This order is no draft any more: it was placed or thrown away. Load the page again.",
};
const KEY_PROBLEM = "The form lost its key. Load the page again.";

const startForm = z.object({ id: neededText(KEY_PROBLEM), supplierId: neededText("Choose a supplier.") });

/** Starts an order by hand: an empty draft. */
export async function startDraft(before: FormState, form: FormData): Promise<FormState> {
  const read = startForm.safeParse(typedValues(form));
  if (!read.success) return refused(before, form, problemsOf(read.error));
  const { db, now, today } = await shopNow();
  const { id, supplierId } = read.data;
  const supplier = (await suppliersOf(db)).find((each) => each.id === supplierId);
  if (supplier === undefined) {
    return refused(before, form, { supplierId: "This supplier is gone. Choose another." });
  }
  const empty = {
    id,
    supplierId,
    placedOn: today,
    note: null,
    deliveryMinor: supplier.deliveryMinor,
    lines: [],
  };
  await draftPurchase(db, empty, await recorderOf(now));
  revalidatePath("/", "layout");
  redirect(`/buying/${encodeURIComponent(id)}`);
}

/** Saves the packs, the delivery and the note of a draft. */
export async function saveDraft(purchaseId: string, before: FormState, form: FormData): Promise<FormState> {
  const { db, shop, today } = await shopNow();
  const [order, offers, suppliers, closures] = await Promise.all([
    purchaseOf(db, purchaseId),
    offersOf(db),
    suppliersOf(db),
    closuresOf(db),
  ]);
  const supplier = suppliers.find((each) => each.id === order?.supplierId);
  if (order === null || order.status !== "draft") return refused(before, form, NOT_DRAFT);
  const read = readDraftForm(typedValues(form), {
    purchaseId,
    offers: offersForDraft(order, offers),
    minorDigits: shop.minorDigits,
    expectedOn:
      supplier === undefined
        ? today
        : promisedOn(
            supplier,
            closures.filter((span) => span.supplierId === supplier.id),
            {
              placedOn: today,
              placedAt: null,
            },
          ),
  });
  if (read.kind === "problems") return refused(before, form, read.problems);
  const outcome = await changeDraft(db, purchaseId, read.change);
  if (outcome.kind !== "changed") return refused(before, form, NOT_DRAFT);
  revalidatePath("/", "layout");
  return done(before, "The draft is saved.");
}

const placeForm = z
  .object({
    placedOn: dayText,
    placedAt: z
      .string()
      .regex(/^([01]?\d|2[0-3]):[0-5]\d$/, "Write a time like 15:30, or leave it empty.")
      .transform((time) => time.padStart(5, "0"))
      .optional(),
    expectedOn: dayText.optional(),
  })
  .refine((placing) => placing.expectedOn === undefined || placing.expectedOn >= placing.placedOn, {
    path: ["expectedOn"],
    message: "The day it should come lies before the day it was ordered.",
  });

/** Marks a draft as placed with its supplier: from now on it is on order. */
export async function place(purchaseId: string, before: FormState, form: FormData): Promise<FormState> {
  const read = placeForm.safeParse(typedValues(form));
  if (!read.success) return refused(before, form, problemsOf(read.error));
  const { db, today } = await shopNow();
  const problem = dayProblem(read.data.placedOn, today);
  if (problem !== null) return refused(before, form, { placedOn: problem });
  const { placedOn, placedAt = null, expectedOn } = read.data;
  const placing = { placedOn, placedAt, ...(expectedOn === undefined ? {} : { expectedOn }) };
  const outcome = await placeDraft(db, purchaseId, placing);
  if (outcome.kind === "empty") {
    return refused(before, form, { "": "Nothing is in this draft yet. Put packs into it first." });
  }
  if (outcome.kind === "unknown") return refused(before, form, NOT_DRAFT);
  revalidatePath("/", "layout");
  redirect(`/buying/${encodeURIComponent(purchaseId)}?placed=1`);
}

/** Throws a draft away. */
export async function throwDraftAway(
  purchaseId: string,
  before: FormState,
  form: FormData,
): Promise<FormState> {
  const { db } = await shopNow();
  const outcome = await deleteDraft(db, purchaseId);
  if (outcome.kind !== "deleted") return refused(before, form, NOT_DRAFT);
  revalidatePath("/", "layout");
  redirect("/buying");
}
