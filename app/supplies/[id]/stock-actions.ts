"use server";

import { revalidatePath } from "next/cache";
import { formatAmount } from "#lib/units/amount-text";
import { reverseMovement } from "#prisma/records/movements";
import { recordSpoilage } from "#prisma/records/spoilage";
import { supplyOf } from "#prisma/records/supplies";
import { dayProblem } from "../../_parts/day-problem";
import { done, type FormState, problemsOf, refused, typedValues } from "../../_parts/form-state";
import { recorderOf, shopNow } from "../../_parts/shop-now";
import { reversalWords } from "./reversal-words";
import { reverseForm } from "./reverse-form";
import { spoiltForm } from "./spoilt-form";

const SUPPLY_GONE = { "": "This supply is gone. Go back to Supplies." };
const SPOILT_SINCE =
  "Nothing was booked: a loss of this supply was booked since this page was shown. " +
  "Look at the ledger below; if this is another loss, press the button again.";

/** Books what was spoilt out of stock. */
export async function spoilSupply(supplyId: string, before: FormState, form: FormData): Promise<FormState> {
  const { db, shop, now, today } = await shopNow();
  const supply = await supplyOf(db, supplyId);
  if (supply === null) return refused(before, form, SUPPLY_GONE);
  const read = spoiltForm(supply.useUnit, shop.measures).safeParse(typedValues(form));
  if (!read.success) return refused(before, form, problemsOf(read.error));
  const problem = dayProblem(read.data.on, today);
  if (problem !== null) return refused(before, form, { on: problem });
  const { amount, ...said } = read.data;
  const spoilt = {
    ...said,
    supplyId,
    amount: amount.amount,
    typedValue: amount.typedValue,
    typedUnit: amount.typedUnit,
  };
  const outcome = await recordSpoilage(db, spoilt, await recorderOf(now));
  if (outcome.kind === "unknown") return refused(before, form, SUPPLY_GONE);
  revalidatePath("/", "layout");
  if (outcome.kind === "already-spoilt")
    return done(before, "This was booked before; it stands in the ledger.");
  if (outcome.kind === "spoilt-since") return refused(before, form, { "": SPOILT_SINCE });
  return done(before, `${formatAmount(amount.amount, supply.useUnit)} booked as spoilt.`);
}

/** Takes one line of the ledger back, by a line that names it. */
export async function takeBack(before: FormState, form: FormData): Promise<FormState> {
  const read = reverseForm.safeParse(typedValues(form));
  if (!read.success) return refused(before, form, problemsOf(read.error));
  const { db, now } = await shopNow();
  const outcome = await reverseMovement(db, read.data.movementId, read.data.reason, await recorderOf(now));
  const answer = reversalWords(outcome);
  revalidatePath("/", "layout");
  return answer.isDone ? done(before, answer.words) : refused(before, form, { "": answer.words });
}
