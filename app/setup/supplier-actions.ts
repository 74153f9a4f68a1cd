"use server";

import { revalidatePath } from "next/cache";
import type { z } from "zod";
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
  const { name, sellsAll } = read.data;
  const taken = await db.supplier.findMany({ select: { id: true } });
  const id =
    supplierId ??
    newSlug(
      name,
      taken.map((row) => row.id),
    );
  await saveSupplier(db, { id, ...termsOf(read.data) }, read.data.closures ?? []);
  const offers = sellsAll ? await offerTheRest(id) : 0;
  revalidatePath("/", "layout");
  return done(before, offers === 0 ? `${name} is saved.` : `${name} is saved, with ${offers} offers.`);
}

/** What a filled form says of a supplier; what was left empty is not so. */
function termsOf(read: z.output<ReturnType<typeof supplierForm>>) {
  const { name, leadTimeDays, workingDays, orderDays, note, retired } = read;
  return {
    name,
    leadTimeDays,
    workingDays,
    orderDays,
    note,
    retired,
    deliveryMinor: read.delivery ?? 0,
    freeDeliveryMinor: read.freeDelivery ?? null,
    leastOrderMinor: read.leastOrder ?? null,
    cutOff: read.cutOff ?? null,
    peakFrom: read.peakFrom ?? null,
    peakTo: read.peakTo ?? null,
    peakExtraDays: read.peakExtraDays ?? 0,
  };
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
