"use server";

import { revalidatePath } from "next/cache";
import { recordCount } from "#prisma/records/counts";
import { stockOf, supplyOf } from "#prisma/records/supplies";
import { done, type FormState, problemsOf, refused, typedValues } from "../../_parts/form-state";
import { recorderOf, shopNow } from "../../_parts/shop-now";
import { countForm } from "./count-form";
import { countWords } from "./count-words";
import { countedAmount } from "./counted-amount";

/** Saves one line of the counting walk. */
export async function saveCount(before: FormState, form: FormData): Promise<FormState> {
  const { db, shop, now } = await shopNow();
  const sent = typedValues(form);
  const read = countForm.safeParse(sent["looksRight"] === "yes" ? { ...sent, method: "looks-right" } : sent);
  if (!read.success) return refused(before, form, problemsOf(read.error));
  const supply = await supplyOf(db, read.data.supplyId);
  if (supply === null)
    return refused(before, form, { supplyId: "This supply is gone. Load the page again." });
  const stock = (await stockOf(db)).find((row) => row.supplyId === supply.id);
  const counted = countedAmount(read.data, supply, stock?.amount ?? null, shop.measures);
  if (counted.kind === "unreadable") return refused(before, form, { typed: counted.problem });
  const { id, method, note } = read.data;
  const count = { id, supplyId: supply.id, amount: counted.amount, method, typed: counted.typed, note };
  const outcome = await recordCount(db, count, await recorderOf(now));
  if (outcome.kind === "unknown")
    return refused(before, form, { supplyId: "This supply is gone. Load the page again." });
  revalidatePath("/", "layout");
  return done(before, countWords(counted, outcome, supply.useUnit));
}
