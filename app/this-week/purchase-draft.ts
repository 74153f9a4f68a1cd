import { packsPrice } from "#lib/replenishment/pack-price";
import type { CheckRow } from "#lib/replenishment/weekly-check";
import type { Amount } from "#lib/units/amount";
import { type Day, maxDay } from "#lib/units/day";
import type { Offer, Supplier } from "#prisma/records/suppliers";
import { expectedDelivery } from "../buying/order-lines";

/** One supply of an order that could be placed. */
export type DraftLine = {
  readonly supplyId: string;
  readonly supply: string;
  readonly offerId: string;
  readonly pack: string;
  readonly packAmount: Amount;
  readonly prices: Pick<Offer, "priceMinor" | "breaks" | "breakKind">;
  /** Packs to start from: the suggestion where it is urgent, none where it may wait. */
  readonly packs: number;
  readonly suggestedPacks: number;
  readonly isUrgent: boolean;
  readonly orderByDate: Day | null;
  readonly expectedOn: Day;
  /** Why the plan has it; null where there is no plan or it is not in it. */
  readonly why: string | null;
};

/** What one supplier could be sent this week. */
export type PurchaseDraft = {
  readonly supplierId: string;
  readonly supplierName: string;
  readonly deliveryMinor: number;
  readonly freeDeliveryMinor: number | null;
  /** When the last of its lines would be here. */
  readonly expectedOn: Day;
  readonly lines: readonly DraftLine[];
};

/**
 * The orders to place this week, one for each supplier: what is urgent with its suggested packs, and what
 * comes up later from the same supplier with none, so that it can share the delivery.
 *
 * @param rows - the rows of the weekly check, most urgent first
 * @param offers - offers in use
 * @param suppliers - suppliers in use
 * @returns a draft for each supplier that has an urgent line, in the order of the rows
 */
export function purchaseDrafts(
  rows: readonly CheckRow[],
  offers: readonly Offer[],
  suppliers: readonly Supplier[],
): PurchaseDraft[] {
  const drafts = new Map<string, PurchaseDraft>();
  for (const row of rows) {
    const offer = offers.find((each) => each.id === row.offerId);
    const supplier = suppliers.find((each) => each.id === offer?.supplierId);
    const line = offer && draftLine(row, offer);
    if (line === undefined || supplier === undefined) continue;
    const before = drafts.get(supplier.id);
    if (before === undefined && !line.isUrgent) continue;
    drafts.set(supplier.id, {
      supplierId: supplier.id,
      supplierName: supplier.name,
      deliveryMinor: supplier.deliveryMinor,
      freeDeliveryMinor: supplier.freeDeliveryMinor,
      expectedOn: before === undefined ? line.expectedOn : maxDay(before.expectedOn, line.expectedOn),
      lines: [...(before?.lines ?? []), line],
    });
  }
  return [...drafts.values()];
}

function draftLine(row: CheckRow, offer: Offer): DraftLine | undefined {
  const isUrgent = row.action === "order-today" || row.action === "order-this-week";
  const suggestedPacks = row.suggestedPacks ?? 0;
  if (suggestedPacks === 0 || !(isUrgent || row.action === "order-later")) return undefined;
  return {
    supplyId: row.supplyId,
    supply: row.supply,
    offerId: offer.id,
    pack: offer.pack,
    packAmount: offer.packAmount,
    prices: { priceMinor: offer.priceMinor, breaks: offer.breaks, breakKind: offer.breakKind },
    packs: isUrgent ? suggestedPacks : 0,
    suggestedPacks,
    isUrgent,
    orderByDate: row.orderByDate,
    expectedOn: row.arrivalDate,
    why: null,
  };
}

/** What an order comes to with the packs as they stand. */
export type DraftTotal = {
  /** The priced lines together, minor units. */
  readonly goodsMinor: number;
  /** Delivery, minor units; zero over the supplier's limit. */
  readonly deliveryMinor: number;
  /** Supplies of the order that have no price. */
  readonly withoutPrice: number;
  readonly lines: number;
};

/**
 * What a draft comes to: goods at the price of their number of packs, and delivery.
 *
 * @param draft - the draft
 * @param packs - packs by offer id; the draft's own where an offer is not named
 * @returns the sums in minor units
 */
export function draftTotal(draft: PurchaseDraft, packs: Readonly<Record<string, number>>): DraftTotal {
  const chosen = draft.lines
    .map((line) => ({ packs: packs[line.offerId] ?? line.packs, prices: line.prices }))
    .filter((line) => line.packs > 0);
  const prices = chosen.map((line) => ({ minor: packsPrice(line.prices, line.packs) }));
  const goodsMinor = prices.reduce((sum, line) => sum + (line.minor ?? 0), 0);
  return {
    goodsMinor,
    deliveryMinor: chosen.length === 0 ? 0 : expectedDelivery(draft, goodsMinor),
    withoutPrice: prices.filter((line) => line.minor === null).length,
    lines: chosen.length,
  };
}
