"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { lineSum } from "#lib/purchasing/line-sum";
import type { Day } from "#lib/units/day";
import { draftPurchase } from "#prisma/records/purchase-drafts";
import { cancelPurchase, placePurchase } from "#prisma/records/purchases";
import { offersOf, suppliersOf } from "#prisma/records/suppliers";
import { type FormState, refused, typedValues } from "../_parts/form-state";
import { recorderOf, shopNow } from "../_parts/shop-now";
import { lineOfOffer } from "../buying/line-of-offer";
import { expectedDelivery } from "../buying/order-lines";
import { readMarkAsOrdered } from "./mark-as-ordered-form";

/** Records an order as placed with its supplier, at the prices of the offers as they stand. */
export async function markAsOrdered(before: FormState, form: FormData): Promise<FormState> {
  const reading = readMarkAsOrdered(typedValues(form));
  if (reading.kind === "nothing-chosen") {
    return refused(before, form, { "": "Packs: every line stands at none. Set at least one, then mark it." });
  }
  if (reading.kind === "unreadable-packs") {
    const problem = `Packs: “${reading.typed}” can't be read. Write a whole number from 0 to 9999.`;
    return refused(before, form, { [`packs:${reading.offerId}`]: problem });
  }
  const { db, now } = await shopNow();
  const { purchaseId, supplierId, placedOn, today, chosen } = reading.order;
  const offers = new Map((await offersOf(db)).map((offer) => [offer.id, offer]));
  const lines = chosen.flatMap(({ offerId, packs, expectedOn }) => {
    const offer = offers.get(offerId);
    if (offer === undefined || offer.supplierId !== supplierId) return [];
    return [{ offer, line: lineOfOffer(offer, packs, expectedOn) }];
  });
  if (lines.length < chosen.length) {
    return refused(before, form, {
      "": "An offer of this order was changed meanwhile. Load the screen again.",
    });
  }
  const supplier = (await suppliersOf(db)).find((each) => each.id === supplierId);
  const goodsMinor = lines.reduce((sum, { offer, line }) => sum + (lineSum(line, offer) ?? 0), 0);
  const deliveryMinor = supplier === undefined ? null : expectedDelivery(supplier, goodsMinor);
  const order = {
    id: purchaseId,
    supplierId,
    placedOn,
    deliveryMinor,
    note: null,
    lines: lines.map(({ line }) => line),
  };
  if (reading.order.as === "draft") {
    await draftPurchase(db, order, await recorderOf(now));
    revalidatePath("/", "layout");
    redirect(`/buying/${purchaseId}`);
  }
  await placePurchase(db, order, await recorderOf(now));
  revalidatePath("/", "layout");
  redirect(`/?${new URLSearchParams({ ordered: purchaseId, ...(today === undefined ? {} : { today }) })}`);
}

/** Takes an order back that was marked by mistake: the lines still open are cancelled. */
export async function takeOrderBack(purchaseId: string, asked: Day | null): Promise<void> {
  const { db, today } = await shopNow();
  await cancelPurchase(db, purchaseId, asked ?? today);
  revalidatePath("/", "layout");
  redirect(asked === null ? "/" : `/?today=${asked}`);
}
