"use server";

import { revalidatePath } from "next/cache";
import { instantOfTime } from "#lib/units/instant";
import { saveRangeSizes } from "#prisma/records/carton-terms";
import { done, type FormState, refused, typedValues } from "../../_parts/form-state";
import { shopNow } from "../../_parts/shop-now";
import { styleFrom } from "../../pack/style-from";
import { readCartonShelf } from "../read-carton-shelf";
import { startRange } from "./range-job";
import { rangeQuestion } from "./range-question";

const WHY_NOT = {
  "no-parcels": "No parcel of the last year has known sizes and weight: describe what you pack most.",
  "no-fill": "Nothing on the shelf fills a carton: give a supply its material and sizes.",
  "no-sizes": "There is no size to choose from: write some.",
} as const;

/** Keeps the sizes that could be bought, and works the ranges out in the background. */
export async function workOutRange(before: FormState, form: FormData): Promise<FormState> {
  const now = await shopNow();
  const { db, shop } = now;
  const text = typedValues(form)["sizes"] ?? "";
  const shelf = await readCartonShelf(now);
  const read = rangeQuestion(shelf, styleFrom(shop.defaultStyle), text, shop);
  if (read.kind === "unreadable") return refused(before, form, { sizes: read.message });
  if (read.kind === "none") return refused(before, form, { "": WHY_NOT[read.reason] });
  await saveRangeSizes(db, text);
  startRange(db, read.question, () => instantOfTime(Date.now()));
  revalidatePath("/cartons/range");
  return done(before, "It is being worked out; each range appears as it is found.");
}
