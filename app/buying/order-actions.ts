"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { day } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import { changeOffers } from "#prisma/records/offer-changes";
import { pricesPaid } from "#prisma/records/prices-paid";
import { type PurchaseOrder, purchaseOf } from "#prisma/records/purchase-orders";
import { cancelPurchase, cancelPurchaseLine } from "#prisma/records/purchases";
import { type ReceiptOutcome, recordReceipts } from "#prisma/records/receipts";
import { suppliesOf } from "#prisma/records/supplies";
import { done, type FormState, refused, typedValues } from "../_parts/form-state";
import { recorderOf, shopNow } from "../_parts/shop-now";
import { offerChangesOf } from "./offer-change-form";
import { readReceiveOrder } from "./receive-order-form";

const ORDER_GONE = { "": "This order is gone. Go back to Buying." };

/** Books what came of an order: stock, landed cost, and what is left of the order. */
export async function receiveOrder(
  purchaseId: string,
  before: FormState,
  form: FormData,
): Promise<FormState> {
  const { db, shop, now, today } = await shopNow();
  const [order, supplies, paid] = await Promise.all([
    purchaseOf(db, purchaseId),
    suppliesOf(db, { retired: true }),
    pricesPaid(db),
  ]);
  if (order === null) return refused(before, form, ORDER_GONE);
  const lastPaid = new Map(paid.map((price) => [price.supplyId, price.perUnit]));
  const read = readReceiveOrder(typedValues(form), { order, supplies, shop, today, lastPaid });
  if (read.kind === "problems") return refused(before, form, read.problems);
  const outcome = await recordReceipts(db, read.receipts, await recorderOf(now));
  const problem = receiptProblem(outcome, order);
  if (problem !== null) return refused(before, form, problem);
  revalidatePath("/", "layout");
  redirect(`/buying/${encodeURIComponent(purchaseId)}?received=1`);
}

/** What to mend where a receipt was refused by the books; null where it was booked, now or before. */
function receiptProblem(outcome: ReceiptOutcome, order: PurchaseOrder): Record<string, string> | null {
  switch (outcome.kind) {
    case "received":
    case "already-received":
      return null;
    case "unknown":
      return { "": "Nothing was booked: a supply of this order is gone. Go back to Buying." };
    case "line-not-open":
      return {
        "": `Nothing was booked: ${nameOf(order, outcome.purchaseLineId)} was received or cancelled meanwhile. Load the page again.`,
      };
    case "before-order":
      return {
        receivedOn: `It was ordered on ${formatDay(day(outcome.placedOn), { year: true })}: it can’t have come before.`,
      };
    case "more-than-ordered":
      return {
        [`came:${outcome.purchaseLineId}`]: `Only ${outcome.packs} of ${nameOf(order, outcome.purchaseLineId)} were on order.`,
        [`more:${outcome.purchaseLineId}`]: "Tick this if it is so.",
      };
    default:
      return outcome satisfies never;
  }
}

function nameOf(order: PurchaseOrder, lineId: string): string {
  return order.lines.find((line) => line.open?.lineId === lineId)?.supply ?? "one line";
}

/** Cancels all that is still on order. */
export async function cancelWholeOrder(
  purchaseId: string,
  before: FormState,
  form: FormData,
): Promise<FormState> {
  const { db, today } = await shopNow();
  const outcome = await cancelPurchase(db, purchaseId, today);
  revalidatePath("/", "layout");
  if (outcome.kind === "cancelled") return done(before, "What was still on order is cancelled.");
  return refused(before, form, { "": "Nothing of this order was on order any more: load the page again." });
}

/** Cancels one line that is still on order. */
export async function cancelOneLine(lineId: string, before: FormState, form: FormData): Promise<FormState> {
  const { db, today } = await shopNow();
  const outcome = await cancelPurchaseLine(db, lineId, today);
  revalidatePath("/", "layout");
  if (outcome.kind === "cancelled") return done(before, "The line is cancelled.");
  return refused(before, form, { "": "This line was received or cancelled before: load the page again." });
}

/** Changes offers to what an order really brought, as ticked. */
export async function keepOfferChanges(
  purchaseId: string,
  before: FormState,
  form: FormData,
): Promise<FormState> {
  const { db, today } = await shopNow();
  const changes = offerChangesOf(typedValues(form));
  if (changes.length === 0)
    return refused(before, form, { "": "Nothing is ticked, so nothing was changed." });
  const changed = await changeOffers(db, changes, today);
  revalidatePath("/", "layout");
  redirect(`/buying/${encodeURIComponent(purchaseId)}?changed=${changed}`);
}
