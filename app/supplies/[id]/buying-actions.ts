"use server";

import { randomUUID } from "node:crypto";
import { revalidatePath } from "next/cache";
import { linePackPrice } from "#lib/purchasing/line-sum";
import { day } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import { promisedOn } from "#prisma/records/promised-on";
import { cancelPurchaseLine, placePurchase } from "#prisma/records/purchases";
import { type ReceiptOutcome, recordReceipt } from "#prisma/records/receipts";
import { closuresOf, offersOf, saveOffer, suppliersOf } from "#prisma/records/suppliers";
import { supplyOf } from "#prisma/records/supplies";
import { dayProblem } from "../../_parts/day-problem";
import { done, type FormState, problemsOf, refused, typedValues } from "../../_parts/form-state";
import { recorderOf, shopNow } from "../../_parts/shop-now";
import { offerForm } from "./offer-form";
import { orderForm } from "./order-form";
import { receiptOf } from "./receipt-of";
import { receiveForm } from "./receive-form";

const SUPPLY_GONE = { "": "This supply is gone. Go back to Supplies." };
const LINE_NOT_OPEN = {
  "":
    "Nothing was booked: this order was received or cancelled before. What came beside it is booked under " +
    "“Something came in without an order”; what was booked wrongly is taken back in the ledger.",
};

/** Adds an offer of a supply or saves its changes. */
export async function keepOffer(supplyId: string, before: FormState, form: FormData): Promise<FormState> {
  const { db, shop, today } = await shopNow();
  const supply = await supplyOf(db, supplyId);
  if (supply === null) return refused(before, form, SUPPLY_GONE);
  const read = offerForm(supply.useUnit, shop.measures, shop.minorDigits).safeParse(typedValues(form));
  if (!read.success) return refused(before, form, problemsOf(read.error));
  const { offerId, supplierId, pack, packAmount, price, breaks, breakKind, volume, retired } = read.data;
  const { soldOut, mostPacks } = read.data;
  const packTyped = `${packAmount.typedValue} ${packAmount.typedUnit}`.trim();
  const offer = {
    supplyId,
    supplierId,
    pack,
    packAmount: packAmount.amount,
    packTyped,
    priceMinor: price ?? null,
    breakKind,
    volumeMl: volume?.ml ?? null,
    volumeTyped: volume?.typed ?? null,
    soldOut,
    mostPacksAMonth: mostPacks ?? null,
  };
  await saveOffer(db, { ...offer, id: offerId ?? randomUUID(), retired, breaks: breaks ?? [] }, today);
  revalidatePath("/", "layout");
  return done(before, retired ? "The offer is no longer counted with." : "The offer is saved.");
}

/** Marks an order as placed. */
export async function placeOrder(supplyId: string, before: FormState, form: FormData): Promise<FormState> {
  const read = orderForm.safeParse(typedValues(form));
  if (!read.success) return refused(before, form, problemsOf(read.error));
  const { db, now, today } = await shopNow();
  const problem = dayProblem(read.data.placedOn, today);
  if (problem !== null) return refused(before, form, { placedOn: problem });
  const offer = (await offersOf(db, { supplyId })).find((row) => row.id === read.data.offerId);
  const supplier = (await suppliersOf(db)).find((row) => row.id === offer?.supplierId);
  if (offer === undefined || supplier === undefined)
    return refused(before, form, { offerId: "This offer is gone. Choose another." });
  const { id, packs, placedOn, note } = read.data;
  const closures = await closuresOf(db, { supplierId: supplier.id });
  const expectedOn = read.data.expectedOn ?? promisedOn(supplier, closures, { placedOn, placedAt: null });
  const line = {
    id: `${id}-1`,
    supplyId,
    offerId: offer.id,
    packs,
    packAmount: offer.packAmount,
    priceMinor: linePackPrice(offer, packs),
    expectedOn,
  };
  await placePurchase(
    db,
    { id, supplierId: supplier.id, placedOn, note, lines: [line] },
    await recorderOf(now),
  );
  revalidatePath("/", "layout");
  return done(
    before,
    `On order with ${supplier.name}, expected ${formatDay(expectedOn, { weekday: true })}.`,
  );
}

/** Books what came in, at its real size and price. */
export async function receive(supplyId: string, before: FormState, form: FormData): Promise<FormState> {
  const { db, shop, now, today } = await shopNow();
  const supply = await supplyOf(db, supplyId);
  if (supply === null) return refused(before, form, SUPPLY_GONE);
  const typed = typedValues(form);
  const read = receiveForm(supply.useUnit, shop, typed["currency"]).safeParse(typed);
  if (!read.success) return refused(before, form, problemsOf(read.error));
  const problem = dayProblem(read.data.receivedOn, today);
  if (problem !== null) return refused(before, form, { receivedOn: problem });
  const outcome = await recordReceipt(db, receiptOf(supplyId, read.data), await recorderOf(now));
  const refusal = receiptProblem(outcome);
  if (refusal !== null) return refused(before, form, refusal);
  revalidatePath("/", "layout");
  return done(before, outcome.kind === "received" ? "Booked into stock." : "This was booked before.");
}

/** What to mend where a receipt was refused; null where it was not. */
function receiptProblem(outcome: ReceiptOutcome): Record<string, string> | null {
  switch (outcome.kind) {
    case "unknown":
      return SUPPLY_GONE;
    case "line-not-open":
      return LINE_NOT_OPEN;
    case "before-order": {
      const placed = formatDay(day(outcome.placedOn), { year: true });
      return { receivedOn: `It was ordered on ${placed}: it can’t have come before. Choose a later day.` };
    }
    case "more-than-ordered":
      return {
        packs: `Only ${outcome.packs} were ordered. Tick “More came than was ordered” if that is so.`,
      };
    case "received":
    case "already-received":
      return null;
    default:
      return outcome satisfies never;
  }
}

/** Cancels an order line that is still on its way. */
export async function cancelOrder(lineId: string, before: FormState, form: FormData): Promise<FormState> {
  const { db, today } = await shopNow();
  const outcome = await cancelPurchaseLine(db, lineId, today);
  revalidatePath("/", "layout");
  if (outcome.kind === "cancelled") return done(before, "The order is cancelled.");
  return refused(before, form, { "": "This order was received or cancelled before: load the page again." });
}
