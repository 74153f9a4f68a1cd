import { invoiceRate } from "#lib/purchasing/invoice-rate";
import { type OfferDifference, offerDifference } from "#lib/purchasing/offer-difference";
import { type Amount, amount, unitsOf } from "#lib/units/amount";
import { amountAsTyped } from "#lib/units/amount-text";
import type { Day } from "#lib/units/day";
import { nearestInteger } from "#lib/units/nearest-integer";
import type { UseUnit } from "#lib/units/use-unit";
import { type Database, inTransaction, type Transaction } from "../client";
import { shopIn } from "./shop";
import { type Offer, offersOf, saveOfferIn } from "./suppliers";

/** Where the last delivery of an offer differs from the offer. */
export type OfferChange = {
  readonly offer: Offer;
  readonly supply: string;
  readonly unit: UseUnit;
  readonly difference: OfferDifference;
};

/** Which parts of an offer to change to what came. */
export type WantedChange = { readonly offerId: string; readonly price: boolean; readonly pack: boolean };

/**
 * Offers of an order whose last delivery was of another pack or price than they say. Only the last delivery of an offer
 * counts, and only if this order brought it.
 */
export async function offerChangesOfPurchase(db: Database, purchaseId: string): Promise<OfferChange[]> {
  const lines = await db.purchaseLine.findMany({ where: { purchaseId, offerId: { not: null } } });
  const ids = new Set(lines.flatMap((line) => line.offerId ?? []));
  const found = await Promise.all([...ids].map((offerId) => changeOf(db, offerId)));
  return found.flatMap((change) => (change === null || change.purchaseId !== purchaseId ? [] : [change]));
}

/**
 * Changes offers to what their last delivery was, each part only where it is wanted; the words of a pack follow its
 * amount where they name it.
 *
 * @param on the day from which a price counts
 * @returns how many offers were changed
 */
export async function changeOffers(db: Database, wanted: readonly WantedChange[], on: Day): Promise<number> {
  return inTransaction(db, async (tx) => {
    let changed = 0;
    for (const want of wanted) {
      const change = await changeOf(tx, want.offerId);
      if (change === null) continue;
      const pack = want.pack ? packOf(change) : {};
      const price = want.price ? priceOf(change) : {};
      await saveOfferIn(tx, { ...change.offer, ...pack, ...price }, on);
      changed += 1;
    }
    return changed;
  });
}

/** How an offer differs from its last delivery; null where it does not, or is not in use. */
async function changeOf(
  db: Database | Transaction,
  offerId: string,
): Promise<(OfferChange & { readonly purchaseId: string }) | null> {
  const offer = (await offersOf(db)).find((each) => each.id === offerId);
  const last = offer === undefined ? null : await lastDelivery(db, offerId);
  if (offer === undefined || last === null) return null;
  const difference = offerDifference(offer, last, last.orderedPacks);
  const { purchaseId, supply, unit } = last;
  return difference === null ? null : { purchaseId, offer, supply, unit, difference };
}

function packOf({ offer, difference: { pack }, unit }: OfferChange): Partial<Offer> {
  if (pack === null) return {};
  const words = renamed(offer.pack, unitsText(pack.from), unitsText(pack.to));
  return { packAmount: pack.to, packTyped: amountAsTyped(pack.to, unit), pack: words };
}

/** "roll of 188 ft" becomes "roll of 175 ft"; words that do not name the amount stay. */
function renamed(words: string, from: string, to: string): string {
  return words.replace(new RegExp(`(?<![\\d.,])${from.replace(".", "\\.")}(?![\\d.,]*\\d)`), to);
}

function unitsText(value: Amount): string {
  return String(Number(unitsOf(value).toFixed(3)));
}

function priceOf({ offer, difference: { price } }: OfferChange): Partial<Offer> {
  if (price === null) return {};
  const { fromPacks, to } = price;
  if (fromPacks === null) return { priceMinor: to };
  return {
    breaks: offer.breaks.map((step) => (step.fromPacks === fromPacks ? { ...step, priceMinor: to } : step)),
  };
}

/** The last delivery of an offer, its price in the shop's currency; null where nothing of it came. */
async function lastDelivery(db: Database | Transaction, offerId: string) {
  const line = await db.receiptLine.findFirst({
    where: { purchaseLine: { offerId }, receipt: { kind: "paid" } },
    orderBy: [{ receipt: { receivedOn: "desc" } }, { receipt: { recordedAt: "desc" } }, { id: "desc" }],
    include: {
      receipt: true,
      supply: true,
      purchaseLine: { include: { purchase: { include: { lines: true } } } },
    },
  });
  if (line === null || line.purchaseLine === null) return null;
  const { purchase } = line.purchaseLine;
  const ordered = purchase.lines.find((each) => each.offerId === offerId && each.restSince === null);
  const rate = invoiceRate(line.receipt, await shopIn(db));
  return {
    purchaseId: purchase.id,
    supply: line.supply.name,
    unit: line.supply.useUnit as UseUnit,
    orderedPacks: ordered?.packs ?? line.packs,
    packs: line.packs,
    packAmount: amount(Number(line.packAmount)),
    priceMinor:
      line.priceMinor === null
        ? null
        : nearestInteger(BigInt(line.priceMinor) * rate.numerator, rate.denominator),
  };
}
