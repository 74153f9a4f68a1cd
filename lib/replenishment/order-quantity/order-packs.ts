import { economicOrderQuantity } from "#lib/replenishment/order-quantity/economic-order-quantity";
import {
  type OrderCosts,
  orderCosts,
  WEEKS_A_YEAR,
  yearlyTotal,
} from "#lib/replenishment/order-quantity/order-costs";
import { brokenLimits, mostPacksByLimit } from "#lib/replenishment/order-quantity/order-limits";
import {
  checkOrderPacksQuestion,
  type OrderLimit,
  type OrderPacksQuestion,
} from "#lib/replenishment/order-quantity/order-packs-question";
import { sizesToTry } from "#lib/replenishment/order-quantity/order-sizes";
import { checkSteps } from "#lib/replenishment/order-quantity/price-steps";

/** Costs that differ by a smaller share are equal, and the fewer packs win. */
const NEARLY = 1e-12;

/** How many packs to order, or why none. */
export type OrderPacks =
  | {
      readonly kind: "order";
      readonly packs: number;
      readonly costs: OrderCosts;
      /** economic order quantity at the first price with the full charge, in packs; null where holding costs nothing */
      readonly plainPacks: number | null;
      /** packs if there were no limits */
      readonly freePacks: number;
      /** the limit that decided; null where the free size is allowed */
      readonly boundBy: OrderLimit | null;
    }
  /** the stock lasts until the planned end */
  | { readonly kind: "enough"; readonly packs: 0; readonly boundBy: "planned-end" }
  /** nothing is used, so there is nothing to order by */
  | { readonly kind: "no-use"; readonly packs: 0 }
  /** even the smallest order that the supplier sends breaks limits */
  | {
      readonly kind: "no-order";
      readonly packs: 0;
      /** fewest packs that the supplier would send; null where no number reaches the least value */
      readonly leastPacks: number | null;
      /** what they break; with "least-order" where a single pack would break nothing else */
      readonly limits: readonly OrderLimit[];
    };

/**
 * How many packs of an offer to order: whole packs, tried one by one, the number with the least cost of goods,
 * delivery, ordering and holding that breaks no limit.
 *
 * The use is the present use a week: nothing is known of a year by it, so that a supply with four weeks of data gets a
 * size like any other. Who trusts the rate for some weeks only sets the longest cover to them. Costs are given a year
 * because shares of value are; the choice would be the same by the week.
 *
 * @param question terms of the order
 * @returns packs with their costs and the limit that decided, or why none are ordered; between equals the fewer packs
 * @throws RangeError when a term is out of range, or when neither holding costs nor a limit end the search
 * @see economic order quantity with price breaks, whole packs and limits by enumeration (Harris 1913 for the cost, from
 * memory); a computed value in tests/reference
 * @example orderPacks(question) // { kind: "order", packs: 4, boundBy: null, ... }
 */
export function orderPacks(question: OrderPacksQuestion): OrderPacks {
  checkOrderPacksQuestion(question);
  checkSteps(question.prices);
  if (question.usePerWeek === 0) return { kind: "no-use", packs: 0 };
  const most = mostPacksByLimit(question);
  if (most.get("planned-end") === 0) return { kind: "enough", packs: 0, boundBy: "planned-end" };
  const sizes = sizesToTry(question, most);
  const freePacks = cheapest(question, sizes, () => true) ?? 1;
  const freeBreaks = brokenLimits(question, most, freePacks);
  const packs =
    freeBreaks.length === 0
      ? freePacks
      : cheapest(question, sizes, (size) => brokenLimits(question, most, size).length === 0);
  if (packs === null) return noOrder(question, most, sizes);
  return {
    kind: "order",
    packs,
    costs: orderCosts(question, packs),
    plainPacks: plainPacks(question),
    freePacks,
    boundBy: decidingLimit({ question, most, sizes, packs }, freeBreaks),
  };
}

/** Of the limits that the free size breaks, the first whose lifting alone would change the order; else the first. */
function decidingLimit(
  found: {
    readonly question: OrderPacksQuestion;
    readonly most: ReadonlyMap<OrderLimit, number>;
    readonly sizes: number;
    readonly packs: number;
  },
  freeBreaks: readonly OrderLimit[],
): OrderLimit | null {
  const { question, most, sizes, packs } = found;
  if (freeBreaks.length < 2) return freeBreaks[0] ?? null;
  const lifted = (limit: OrderLimit): number | null =>
    cheapest(question, sizes, (size) =>
      brokenLimits(question, most, size).every((broken) => broken === limit),
    );
  return freeBreaks.find((limit) => lifted(limit) !== packs) ?? freeBreaks[0] ?? null;
}

function noOrder(
  question: OrderPacksQuestion,
  most: ReadonlyMap<OrderLimit, number>,
  sizes: number,
): OrderPacks {
  for (let size = 1; size <= sizes; size += 1) {
    const limits = brokenLimits(question, most, size);
    if (limits.includes("least-order")) continue;
    const single = brokenLimits(question, most, 1);
    const onlySize = single.every((limit) => limit === "least-order");
    return {
      kind: "no-order",
      packs: 0,
      leastPacks: size,
      limits: size > 1 && onlySize ? [...limits, "least-order"] : limits,
    };
  }
  return { kind: "no-order", packs: 0, leastPacks: null, limits: ["least-order"] };
}

function cheapest(
  question: OrderPacksQuestion,
  sizes: number,
  allowed: (packs: number) => boolean,
): number | null {
  let best: number | null = null;
  let least = Infinity;
  for (let packs = 1; packs <= sizes; packs += 1) {
    if (!allowed(packs)) continue;
    const cost = yearlyTotal(question, packs);
    if (cost < least * (1 - NEARLY)) {
      best = packs;
      least = cost;
    }
  }
  return best;
}

function plainPacks({
  prices,
  delivery,
  orderCost,
  holdingShare,
  usePerWeek,
  packAmount,
}: OrderPacksQuestion): number | null {
  const holdingCost = holdingShare * (prices.steps[0]?.price ?? 0);
  if (holdingCost <= 0) return null;
  return economicOrderQuantity({
    orderCost: orderCost + delivery.charge,
    holdingCost,
    yearlyUse: (usePerWeek * WEEKS_A_YEAR) / packAmount,
  });
}
