import { type PriceMove, priceMove } from "#lib/purchasing/price-move";
import { packPrice } from "#lib/replenishment/pack-price";
import { AMOUNT_PER_UNIT } from "#lib/units/amount";
import { addDays, type Day } from "#lib/units/day";
import type { UseUnit } from "#lib/units/use-unit";
import type { Database } from "#prisma/client";
import { pricesPaid, type SupplyPricePaid } from "#prisma/records/prices-paid";
import { type PurchaseOrder, purchasesOf } from "#prisma/records/purchase-orders";
import { type MonthSpend, spendingFrom } from "#prisma/records/spending";
import { type DeliveryRecord, supplierDeliveries } from "#prisma/records/supplier-deliveries";
import { type Offer, offersOf, type Supplier, suppliersOf } from "#prisma/records/suppliers";
import { suppliesOf } from "#prisma/records/supplies";

const ORDERS_SHOWN = 12;
const DAYS_OF_SPENDING = 365;
const VALUE_PER_MINOR = 10_000;

/** What a use unit of a supply cost, and what it is on offer for. */
export type SupplyPrices = {
  readonly supplyId: string;
  readonly supply: string;
  readonly unit: UseUnit;
  readonly paid: readonly SupplyPricePaid[];
  readonly move: PriceMove;
};

/** All that the screen of buying shows. */
export type BuyingNow = {
  readonly drafts: readonly PurchaseOrder[];
  readonly onOrder: readonly PurchaseOrder[];
  readonly past: readonly PurchaseOrder[];
  readonly offers: readonly Offer[];
  readonly suppliers: readonly Supplier[];
  readonly spending: readonly MonthSpend[];
  readonly prices: readonly SupplyPrices[];
  readonly deliveries: ReadonlyMap<string, DeliveryRecord>;
};

/**
 * Reads orders, spending and prices.
 *
 * @param db the open database
 * @param today the shop's day
 * @returns the screen's facts
 */
export async function buyingNow(db: Database, today: Day): Promise<BuyingNow> {
  const from = `${addDays(today, -DAYS_OF_SPENDING).slice(0, 7)}-01`;
  const [orders, offers, suppliers, supplies, paid, spending, deliveries] = await Promise.all([
    purchasesOf(db, { others: ORDERS_SHOWN }),
    offersOf(db),
    suppliersOf(db),
    suppliesOf(db),
    pricesPaid(db),
    spendingFrom(db, from),
    supplierDeliveries(db, today),
  ]);
  const prices = supplies.flatMap((supply): SupplyPrices[] => {
    const own = paid.filter((price) => price.supplyId === supply.id);
    const move = priceMove(own, offerPerUnit(offers, own.at(-1), supply.id));
    if (move === null) return [];
    return [{ supplyId: supply.id, supply: supply.name, unit: supply.useUnit, paid: own, move }];
  });
  return {
    drafts: orders.filter((order) => order.status === "draft"),
    onOrder: orders.filter((order) => order.status === "placed" || order.status === "partly received"),
    past: orders.filter((order) => order.status === "received" || order.status === "cancelled"),
    offers,
    suppliers,
    spending,
    prices,
    deliveries,
  };
}

/** What the offer behind the last price is now, at as many packs; else the cheapest of the same supplier. */
function offerPerUnit(
  offers: readonly Offer[],
  last: SupplyPricePaid | undefined,
  supplyId: string,
): number | null {
  if (last === undefined) return null;
  const same = offers.filter((offer) => offer.supplyId === supplyId && offer.supplierId === last.supplierId);
  const bought = same.filter((offer) => offer.id === last.offerId);
  const prices = (bought.length > 0 ? bought : same).flatMap((offer) => {
    const price = packPrice(offer, last.packs);
    return price === null ? [] : [(price * VALUE_PER_MINOR * AMOUNT_PER_UNIT) / offer.packAmount];
  });
  return prices.length === 0 ? null : Math.min(...prices);
}
