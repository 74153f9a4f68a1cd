"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { lineSum } from "#lib/purchasing/line-sum";
import { saveCushionTerms } from "#prisma/records/cushion-terms";
import { promisedOn } from "#prisma/records/promised-on";
import { draftPurchases } from "#prisma/records/purchase-drafts";
import { closuresOf, offersOf, suppliersOf } from "#prisma/records/suppliers";
import { done, type FormState, problemsOf, refused, typedValues } from "../_parts/form-state";
import { recorderOf, shopNow } from "../_parts/shop-now";
import { lineOfOffer } from "../buying/line-of-offer";
import { expectedDelivery } from "../buying/order-lines";
import { handedForm } from "./purchase/handed-orders";
import { cushionSettingsForm } from "./settings-form";

/** Keeps what minutes and breakage count for. */
export async function keepCushionSettings(before: FormState, form: FormData): Promise<FormState> {
  const { db, shop } = await shopNow();
  const read = cushionSettingsForm(shop.minorDigits).safeParse(typedValues(form));
  if (!read.success) return refused(before, form, problemsOf(read.error));
  const { hourMinor, terms } = read.data;
  await saveCushionTerms(db, terms, hourMinor);
  revalidatePath("/", "layout");
  return done(before, "Saved.");
}

const CHANGED = "An offer of this plan was changed meanwhile. Load the screen again.";

/** Writes the orders of a plan down as drafts, one for each supplier; nothing is on order until they are placed. */
export async function handToBuying(before: FormState, form: FormData): Promise<FormState> {
  const read = handedForm.safeParse(typedValues(form));
  if (!read.success) {
    return refused(before, form, {
      "": "The plan could not be handed over as it is. Load the screen again.",
    });
  }
  const { db, now, today } = await shopNow();
  const { key, order } = read.data;
  const [offers, suppliers, closures] = await Promise.all([offersOf(db), suppliersOf(db), closuresOf(db)]);
  const chosen = order.flatMap(({ offerId, packs }) => {
    const offer = offers.find(({ id }) => id === offerId);
    const supplier = suppliers.find(({ id }) => id === offer?.supplierId);
    return offer === undefined || supplier === undefined ? [] : [{ offer, supplier, packs }];
  });
  if (chosen.length < order.length) return refused(before, form, { "": CHANGED });
  const drafts = [...new Set(chosen.map(({ supplier }) => supplier))].map((supplier) => {
    const own = closures.filter(({ supplierId }) => supplierId === supplier.id);
    const expectedOn = promisedOn(supplier, own, { placedOn: today, placedAt: null });
    const lines = chosen
      .filter((each) => each.supplier === supplier)
      .map(({ offer, packs }) => ({ offer, line: lineOfOffer(offer, packs, expectedOn) }));
    const goodsMinor = lines.reduce((sum, { offer, line }) => sum + (lineSum(line, offer) ?? 0), 0);
    return {
      id: `${key}-${supplier.id}`,
      supplierId: supplier.id,
      placedOn: today,
      deliveryMinor: expectedDelivery(supplier, goodsMinor),
      note: null,
      lines: lines.map(({ line }) => line),
    };
  });
  await draftPurchases(db, drafts, await recorderOf(now));
  revalidatePath("/", "layout");
  redirect("/buying");
}
