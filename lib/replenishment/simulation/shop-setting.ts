import type { PriceSteps } from "#lib/replenishment/order-quantity/price-steps";

/** A supply as a shop begins with it. Amounts in use units, money in minor units. */
export type ShopSupply = {
  readonly supplyId: string;
  readonly startStock: number;
  /** already on order: comes at the start of that day, counted from 0 */
  readonly arrivals: readonly { readonly dueDay: number; readonly amount: number }[];
  /** what one unit in stock is worth, at its price */
  readonly unitValue: number;
  readonly litresPerUnit: number;
};

/** How long an order takes: whole days to its arrival, 0: before that day's use; chances add up to 1. */
export type LeadTimes = readonly { readonly days: number; readonly chance: number }[];

/** A supplier as it is played. */
export type ShopSupplier = {
  readonly supplierId: string;
  /** the same for every order, or by the day it is placed on, counted from 0: weekends, closed days, the peak */
  readonly leadTimes: LeadTimes | ((day: number) => LeadTimes);
  /** for each order; none from that value of goods on; null: never free */
  readonly delivery: { readonly charge: number; readonly freeFrom: number | null };
  /** least value of goods that is sent; null for any */
  readonly leastValue: number | null;
};

/** An offer as it is played. */
export type ShopOffer = {
  readonly offerId: string;
  readonly supplyId: string;
  readonly supplierId: string;
  readonly packAmount: number;
  /** price of a pack, steps counted in packs */
  readonly prices: PriceSteps;
};

/** A supply as it stands at a check. */
export type SupplyState = {
  /** from 0 */
  readonly onHand: number;
  /** use that waits for a delivery, from 0 */
  readonly owed: number;
  /** with the day on which each order should come, which is not always when it will */
  readonly onOrder: readonly { readonly expectedDay: number; readonly amount: number }[];
  /** on hand and on order, less what is owed */
  readonly position: number;
};

/** A shop at a check. */
export type ShopState = {
  /** from 0 */
  readonly day: number;
  readonly supplies: ReadonlyMap<string, SupplyState>;
};

/** A line to order. */
export type PolicyLine = { readonly offerId: string; readonly packs: number };

/** A way to order: what a check orders. All lines of a supplier at one check go into one order. */
export type OrderPolicy = (state: ShopState) => readonly PolicyLine[];

/** A shop with its terms and its way to order. */
export type ShopSetting = {
  readonly supplies: readonly ShopSupply[];
  readonly suppliers: readonly ShopSupplier[];
  readonly offers: readonly ShopOffer[];
  /** days from one check to the next */
  readonly reviewDays: number;
  /** day of the first check, counted from 0 */
  readonly firstCheck: number;
  /** what cannot be used from stock waits for a delivery, or something else is used in its place */
  readonly unmet: "met-later" | "substitute";
  /** figures are kept from this day on; 0 for all */
  readonly countedFrom: number;
  readonly policy: OrderPolicy;
};
