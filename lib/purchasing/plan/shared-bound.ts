import { cashLimits } from "#lib/purchasing/plan/cash-limits";
import type { ModelSupply } from "#lib/purchasing/plan/model-columns";
import { pairSpace } from "#lib/purchasing/plan/pair-space";
import type { PlanChoice } from "#lib/purchasing/plan/plan-choice";
import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";
import { scheduleSpace } from "#lib/purchasing/plan/schedule-space";
import { type SharedPair, type SharedParts, sharedCost } from "#lib/purchasing/plan/shared-cost";
import { sharedOrders } from "#lib/purchasing/plan/shared-orders";
import { firstPrices, PRICE_KINDS, type SharedPrices } from "#lib/purchasing/plan/shared-prices";

/** A known plan, its cost, and when to stop. */
export type SharedSearch = {
  readonly choice: PlanChoice;
  /** what the known plan costs, minor units */
  readonly knownMinor: number;
  /** stop when the bound is within this share of the known cost */
  readonly gap: number;
  readonly isOver: () => boolean;
};

/** A cost that no plan is below, the prices that prove it and what they share; null where there are none. */
export type SharedBound = {
  readonly minor: number;
  readonly proof: { readonly parts: SharedParts; readonly prices: SharedPrices } | null;
};

/** Enough for a bound that moves no more. */
const MOST_TURNS = 1_000;

/**
 * A cost that no plan is below, without a solver: prices share the orders, cash and room among the supplies, each
 * of which is then planned exactly by itself; the prices are raised where too much is taken.
 *
 * @param question all of the plan
 * @param supplies supplies with their slots
 * @param search a known plan and when to stop
 * @returns minor units and the prices; minus Infinity where the supplies cannot be planned exactly one by one
 * @source subgradient steps with the length of Polyak (1969), averaged directions; from memory
 */
export function sharedBound(
  question: PlanQuestion,
  supplies: readonly ModelSupply[],
  search: SharedSearch,
): SharedBound {
  const parts = sharedParts(question, supplies);
  if (parts === null) return { minor: Number.NEGATIVE_INFINITY, proof: null };
  const slots = supplies.flatMap((of) => of.slots);
  const counts = { slots: slots.length, cash: cashLimits(question).length, weeks: question.weeks };
  const prices = firstPrices(parts.orders, search.choice, counts);
  const scales = priceScales(parts, prices);
  const nothing = { minor: Number.NEGATIVE_INFINITY, prices };
  let walk: Walk | null = { prices, best: nothing, direction: null, length: FIRST_LENGTH, idle: 0 };
  let best = walk.best;
  const nearMinor = search.knownMinor - search.gap * Math.abs(search.knownMinor);
  // One turn always, so that something is proven.
  for (let turn = 0; turn < MOST_TURNS && best.minor < nearMinor; turn++) {
    if (turn > 0 && search.isOver()) break;
    walk = walked(parts, walk, { isExact: turn % EXACT_EVERY === 0, scales, knownMinor: search.knownMinor });
    if (walk === null) break;
    best = walk.best;
  }
  // Room for the rounding of sums.
  return { minor: best.minor - 1e-7 * Math.abs(best.minor), proof: { parts, prices: best.prices } };
}

/** Where the prices are, the best so far, and how they move. */
type Walk = {
  readonly prices: SharedPrices;
  readonly best: { readonly minor: number; readonly prices: SharedPrices };
  /** null at first, and after going back to the best */
  readonly direction: SharedPrices | null;
  readonly length: number;
  /** exact turns without gain */
  readonly idle: number;
};

/** One turn: the cost at the prices, then a step to others, or back to the best; null at the end. */
function walked(
  parts: SharedParts,
  walk: Walk,
  {
    isExact,
    scales,
    knownMinor,
  }: { readonly isExact: boolean; readonly scales: SharedPrices; readonly knownMinor: number },
): Walk | null {
  const { minor, over } = sharedCost(parts, walk.prices, isExact);
  const isGain = isExact && minor > walk.best.minor;
  const best = isGain ? { minor, prices: walk.prices } : walk.best;
  const idle = isGain ? 0 : walk.idle + Number(isExact);
  if (idle >= PATIENCE) return wentBack({ ...walk, best });
  const direction = averaged(walk.direction, over);
  const next = stepped(walk.prices, direction, scales, walk.length * Math.max(0, knownMinor - minor));
  if (next === null) return wentBack({ ...walk, best });
  return { prices: next, best, direction, length: walk.length, idle };
}

function wentBack({ best, length }: Walk): Walk | null {
  if (length / 2 < LEAST_LENGTH) return null;
  return { prices: best.prices, best, direction: null, length: length / 2, idle: 0 };
}

/** Part of the step that would reach the known cost; halved after so many exact turns without gain. */
const FIRST_LENGTH = 0.3;
const LEAST_LENGTH = 1e-3;
const PATIENCE = 2;
/** Pairs take long, so that in other turns they choose among the orders found before. */
const EXACT_EVERY = 8;
const CELLS = 16;
/** Part of the last direction that the next one keeps. */
const KEPT = 0.6;

/** Null where a supply is in several pairs, or has so many sums of packs that they are looked at in bundles. */
function sharedParts(question: PlanQuestion, supplies: readonly ModelSupply[]): SharedParts | null {
  const paired = question.substitutes.flatMap((pair) => [pair.fromSupplyId, pair.toSupplyId]);
  if (new Set(paired).size < paired.length) return null;
  const known = new Map(supplies.map((of) => [of.supply.id, of]));
  const pairs = question.substitutes.flatMap(({ fromSupplyId, toSupplyId, ratio }): SharedPair[] => {
    const from = known.get(fromSupplyId);
    const to = known.get(toSupplyId);
    return from === undefined || to === undefined
      ? []
      : [{ space: pairSpace(from, to, ratio, question.weeks, CELLS), found: [] }];
  });
  const singles = supplies
    .filter(({ supply }) => !paired.includes(supply.id))
    .map((of) => scheduleSpace(of, question.weeks, [], "open"));
  const spaces = [...singles, ...pairs.flatMap(({ space }) => [space.from, space.to])];
  if (spaces.some((space) => space.slots.flat().some(({ bundle }) => bundle > 1))) return null;
  const slots = supplies.flatMap((of) => of.slots);
  const orders = sharedOrders(question, slots);
  const orderOf = new Int32Array(slots.length);
  orders.forEach((order, place) => {
    for (const { number } of order.slots) orderOf[number] = place;
  });
  return { question, orders, orderOf, singles, pairs };
}

/** What one step of each price is, so that all move alike: goods are counted in thresholds, cash and room in parts. */
function priceScales({ question, orders }: SharedParts, like: SharedPrices): SharedPrices {
  const room = Math.max(1e-9, (question.limits.litres ?? 1) / LIMIT_PARTS);
  return {
    part: like.part.map(() => 1),
    free: Float64Array.from(orders, ({ freeFrom }) => 1 / Math.max(1, freeFrom ?? 1)),
    least: Float64Array.from(orders, ({ supplier }) => 1 / Math.max(1, supplier.leastOrderMinor ?? 1)),
    cash: Float64Array.from(cashLimits(question), ({ minor }) => LIMIT_PARTS / Math.max(1, minor)),
    litre: like.litre.map(() => 1 / room),
  };
}

const LIMIT_PARTS = 3;

function averaged(before: SharedPrices | null, over: SharedPrices): SharedPrices {
  if (before === null) return over;
  return mapped((kind) => over[kind].map((each, at) => each + KEPT * ((before[kind][at] ?? 0) - each)));
}

/** Null where no price can move. */
function stepped(
  prices: SharedPrices,
  direction: SharedPrices,
  scales: SharedPrices,
  lacking: number,
): SharedPrices | null {
  let square = 0;
  for (const kind of PRICE_KINDS) {
    direction[kind].forEach((each, at) => {
      const scaled = each * (scales[kind][at] ?? 0);
      if (each > 0 || (prices[kind][at] ?? 0) > 0) square += scaled * scaled;
    });
  }
  if (square === 0 || lacking <= 0) return null;
  const step = lacking / square;
  return mapped((kind) =>
    prices[kind].map((price, at) =>
      Math.max(0, price + step * (direction[kind][at] ?? 0) * (scales[kind][at] ?? 0) ** 2),
    ),
  );
}

function mapped(of: (kind: (typeof PRICE_KINDS)[number]) => Float64Array): SharedPrices {
  return { part: of("part"), free: of("free"), least: of("least"), cash: of("cash"), litre: of("litre") };
}
