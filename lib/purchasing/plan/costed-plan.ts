import type { ChosenStandIn, PlanChoice } from "#lib/purchasing/plan/plan-choice";
import type { PlanOffer } from "#lib/purchasing/plan/plan-offer";
import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";
import type { PlanSupplier } from "#lib/purchasing/plan/plan-supplier";
import type { PlanSupply } from "#lib/purchasing/plan/plan-supply";
import { packsMinor } from "#lib/purchasing/plan/price-tiers";

/** One line of an order. */
export type PlanLine = { readonly offerId: string; readonly packs: number; readonly goodsMinor: number };

/** One order to one supplier in one week. */
export type PlanOrder = {
  readonly supplierId: string;
  readonly week: number;
  readonly lines: readonly PlanLine[];
  readonly goodsMinor: number;
  readonly deliveryMinor: number;
};

/** A supply's stock through the weeks, use units. */
export type StockPath = {
  readonly supplyId: string;
  /** right after the arrivals of each week */
  readonly after: readonly number[];
  /** at the end of each week; below 0 what is owed */
  readonly end: readonly number[];
};

/** A week at whose end a supply is below the wanted stock. */
export type PlanShortage = {
  readonly supplyId: string;
  readonly week: number;
  /** use units below the wanted stock */
  readonly missing: number;
  /** use units below nothing */
  readonly owed: number;
};

/** What the plan costs, part by part; minor units. Goods and delivery are whole. */
export type PlanCosts = {
  readonly goodsMinor: number;
  readonly deliveryMinor: number;
  readonly handlingMinor: number;
  readonly holdingMinor: number;
  readonly shortMinor: number;
  /** worth of what is left at the end, less what is owed then */
  readonly endValueMinor: number;
  /** goods + delivery + handling + holding + short - end value */
  readonly totalMinor: number;
};

/** A plan with all that follows from it. */
export type CostedPlan = {
  readonly orders: readonly PlanOrder[];
  readonly standIns: readonly ChosenStandIn[];
  readonly stock: readonly StockPath[];
  readonly shortages: readonly PlanShortage[];
  readonly costs: PlanCosts;
};

const NEARLY_NOTHING = 1e-6;

/**
 * What a choice of packs costs and what becomes of the stock: from the price steps and thresholds alone, never
 * from a solver's figures.
 *
 * @param question all of the plan
 * @param choice packs by offer and week, and what stands in for what
 * @returns orders sorted by week and supplier, stock, shortages, costs
 * @throws RangeError for an offer that the question does not have or that has no price
 */
export function costedPlan(question: PlanQuestion, choice: PlanChoice): CostedPlan {
  const orders = ordersOf(question, choice);
  const stock = question.supplies.map((supply) => stockPath(question, choice, supply));
  const bySupply = question.supplies.map((supply, index) => ({ supply, path: stock[index] }));
  const shortages = bySupply.flatMap(({ supply, path }) => shortagesOf(supply, path?.end ?? []));
  return {
    orders,
    standIns: choice.standIns,
    stock,
    shortages,
    costs: costsOf(question, orders, stock),
  };
}

function ordersOf(question: PlanQuestion, { lines }: PlanChoice): PlanOrder[] {
  const offers = new Map(question.offers.map((offer) => [offer.id, offer]));
  const suppliers = new Map(question.suppliers.map((supplier, index) => [supplier.id, { supplier, index }]));
  type Draft = { supplier: PlanSupplier; index: number; week: number; lines: PlanLine[] };
  const drafts = new Map<string, Draft>();
  for (const { offerId, week, packs } of lines) {
    if (packs === 0) continue;
    const offer = known(offers.get(offerId), `offer ${offerId}`);
    const of = known(suppliers.get(offer.supplierId), `supplier ${offer.supplierId}`);
    const key = `${week} ${of.index}`;
    const draft = drafts.get(key) ?? { ...of, week, lines: [] };
    draft.lines.push({ offerId, packs, goodsMinor: packsMinor(offer, packs) });
    drafts.set(key, draft);
  }
  const place = new Map(question.offers.map(({ id }: PlanOffer, index) => [id, index]));
  return [...drafts.values()]
    .toSorted((a, b) => a.week - b.week || a.index - b.index)
    .map(({ supplier, week, lines: drawn }) => {
      const goodsMinor = drawn.reduce((sum, line) => sum + line.goodsMinor, 0);
      const sorted = drawn.toSorted((a, b) => (place.get(a.offerId) ?? 0) - (place.get(b.offerId) ?? 0));
      const deliveryMinor = deliveryOf(supplier, goodsMinor);
      return { supplierId: supplier.id, week, lines: sorted, goodsMinor, deliveryMinor };
    });
}

/**
 * What a supplier takes for delivering an order.
 *
 * @param supplier the supplier's terms
 * @param goodsMinor the order's goods, minor units
 * @returns minor units
 */
export function deliveryOf(supplier: PlanSupplier, goodsMinor: number): number {
  const isFree = supplier.freeFromMinor !== null && goodsMinor >= supplier.freeFromMinor;
  return isFree ? 0 : supplier.deliveryMinor;
}

function stockPath(question: PlanQuestion, { lines, standIns }: PlanChoice, supply: PlanSupply): StockPath {
  const inflow = supply.arrivals.slice();
  const outflow = supply.use.slice();
  const add = (to: number[], week: number, units: number) => {
    to[week] = (to[week] ?? 0) + units;
  };
  const offers = new Map(question.offers.map((offer) => [offer.id, offer]));
  for (const { offerId, week, packs } of lines) {
    const offer = offers.get(offerId);
    if (offer?.supplyId === supply.id) add(inflow, week + offer.leadWeeks, packs * offer.unitsPerPack);
  }
  for (const { fromSupplyId, toSupplyId, week, units } of standIns) {
    const ratio = ratioOf(question, fromSupplyId, toSupplyId);
    if (toSupplyId === supply.id) add(outflow, week, -units);
    if (fromSupplyId === supply.id) add(outflow, week, ratio * units);
  }
  const after: number[] = [];
  const end: number[] = [];
  let stock = supply.stock;
  for (let week = 0; week < question.weeks; week++) {
    stock += inflow[week] ?? 0;
    after.push(stock);
    stock -= outflow[week] ?? 0;
    end.push(stock);
  }
  return { supplyId: supply.id, after, end };
}

function ratioOf({ substitutes }: PlanQuestion, from: string, to: string): number {
  const found = substitutes.find(
    ({ fromSupplyId, toSupplyId }) => fromSupplyId === from && toSupplyId === to,
  );
  return known(found, `stand-in of ${from} for ${to}`).ratio;
}

function shortagesOf(supply: PlanSupply, end: readonly number[]): PlanShortage[] {
  return end.flatMap((stock, week) => {
    const missing = (supply.wanted[week] ?? 0) - stock;
    if (missing <= NEARLY_NOTHING) return [];
    const owed = -stock > NEARLY_NOTHING ? -stock : 0;
    return [{ supplyId: supply.id, week, missing, owed }];
  });
}

function costsOf(
  question: PlanQuestion,
  orders: readonly PlanOrder[],
  stock: readonly StockPath[],
): PlanCosts {
  const handling = new Map(question.suppliers.map((supplier) => [supplier.id, supplier.handlingMinor]));
  const goodsMinor = orders.reduce((sum, order) => sum + order.goodsMinor, 0);
  const deliveryMinor = orders.reduce((sum, order) => sum + order.deliveryMinor, 0);
  const handlingMinor = orders.reduce((sum, { supplierId }) => sum + (handling.get(supplierId) ?? 0), 0);
  let holdingMinor = 0;
  let shortMinor = 0;
  let endValueMinor = 0;
  question.supplies.forEach((supply, index) => {
    const end = stock[index]?.end ?? [];
    end.forEach((units, week) => {
      holdingMinor += supply.holdingMinor * Math.max(0, units);
      shortMinor += supply.shortMinor * Math.max(0, (supply.wanted[week] ?? 0) - units);
    });
    endValueMinor += supply.endValueMinor * (end.at(-1) ?? 0);
  });
  const totalMinor = goodsMinor + deliveryMinor + handlingMinor + holdingMinor + shortMinor - endValueMinor;
  return { goodsMinor, deliveryMinor, handlingMinor, holdingMinor, shortMinor, endValueMinor, totalMinor };
}

function known<T>(found: T | undefined, name: string): T {
  if (found === undefined) throw new RangeError(`costedPlan requires what the question has, got ${name}`);
  return found;
}
