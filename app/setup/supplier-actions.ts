"use server";

import { revalidatePath } from "next/cache";
import { offersOf, saveOffer, saveSupplier } from "#prisma/records/suppliers";
import { suppliesOf } from "#prisma/records/supplies";
import { done, type FormState, problemsOf, refused, typedValues } from "../_parts/form-state";
import { newSlug } from "../_parts/new-slug";
import { shopNow } from "../_parts/shop-now";
import { countedPack } from "./counted-pack";
import { supplierForm } from "./supplier-form";

/** Adds a supplier, or saves the changes of the one with this id. */
export async function keepSupplier(
  supplierId: string | null,
  before: FormState,
  form: FormData,
): Promise<FormState> {
  const { db, shop } = await shopNow();
  const read = supplierForm(shop.minorDigits).safeParse(typedValues(form));
  if (!read.success) return refused(before, form, problemsOf(read.error));
  const { name, leadTimeDays, delivery, freeDelivery, note, retired, sellsAll } = read.data;
  const taken = await db.supplier.findMany({ select: { id: true } });
  const id =
    supplierId ??
    newSlug(
      name,
      taken.map((row) => row.id),
    );
  const charges = { deliveryMinor: delivery ?? 0, freeDeliveryMinor: freeDelivery ?? null };
  await saveSupplier(db, { id, name, leadTimeDays, ...charges, note, retired });
  const offers = sellsAll ? await offerTheRest(id) : 0;
  revalidatePath("/", "layout");
  return done(before, offers === 0 ? `${name} is saved.` : `${name} is saved, with ${offers} offers.`);
}

/** An offer without a price for each supply that nobody sells yet, in the pack it is counted in. */
async function offerTheRest(supplierId: string): Promise<number> {
  const { db } = await shopNow();
  const offered = new Set((await offersOf(db)).map((offer) => offer.supplyId));
  const missing = (await suppliesOf(db)).filter((supply) => !offered.has(supply.id));
  for (const supply of missing) {
    const id = `${supplierId}-${supply.id}`;
    await saveOffer(db, {
      id,
      supplyId: supply.id,
      supplierId,
      ...countedPack(supply),
      priceMinor: null,
      retired: false,
      breaks: [],
    });
  }
  return missing.length;
}
