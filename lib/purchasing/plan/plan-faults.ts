import type { CostedPlan, PlanOrder } from "#lib/purchasing/plan/costed-plan";
import type { PlanOffer } from "#lib/purchasing/plan/plan-offer";
import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";
import type { PlanSupply } from "#lib/purchasing/plan/plan-supply";

/** Something that a plan breaks, where, and by how much in the limit's own unit. */
export type PlanFault = {
  readonly kind:
    | "packs"
    | "week"
    | "late"
    | "goods"
    | "delivery"
    | "least-order"
    | "most-stock"
    | "room"
    | "not-urgent"
    | "cash"
    | "stand-in"
    | "lent-too-much"
    | "stock"
    | "costs";
  readonly at: string;
  readonly by: number;
};

const TINY = 1e-6;

/**
 * Holds a plan against every rule of its question. It shares no code with what writes the model or costs the
 * plan: prices, stock and sums are worked out here again, pack by pack and week by week.
 *
 * @param question all of the plan
 * @param plan a plan for it
 * @returns what is broken; empty for a sound plan
 */
export function planFaults(question: PlanQuestion, plan: CostedPlan): PlanFault[] {
  return [
    ...orderFaults(question, plan),
    ...cashFaults(question, plan),
    ...standInFaults(question, plan),
    ...stockFaults(question, plan),
    ...costFaults(question, plan),
    ...urgentFaults(question, plan),
  ];
}

/** Price of the packs, one after the other. */
function priceOf(offer: PlanOffer, packs: number): number {
  let sum = 0;
  for (let pack = 1; pack <= packs; pack++) {
    const reached = offer.kind === "all-units" ? packs : pack;
    let price = offer.steps?.[0]?.priceMinor ?? Number.NaN;
    for (const step of offer.steps ?? []) if (step.fromPacks <= reached) price = step.priceMinor;
    sum += price;
  }
  return sum;
}

function orderFaults(question: PlanQuestion, plan: CostedPlan): PlanFault[] {
  const faults: PlanFault[] = [];
  const seen = new Set<string>();
  for (const order of plan.orders) {
    const at = `order to ${order.supplierId} in week ${order.week}`;
    const supplier = question.suppliers.find(({ id }) => id === order.supplierId);
    if (supplier?.orderWeeks[order.week] !== true || seen.has(at)) faults.push({ kind: "week", at, by: 1 });
    seen.add(at);
    const { goods, wrong } = goodsFaults(question, order);
    faults.push(...wrong);
    if (goods !== order.goodsMinor) faults.push({ kind: "goods", at, by: order.goodsMinor - goods });
    const least = supplier?.leastOrderMinor ?? 0;
    if (goods < least) faults.push({ kind: "least-order", at, by: least - goods });
    const threshold = supplier?.freeFromMinor ?? Number.POSITIVE_INFINITY;
    const by = order.deliveryMinor - (goods >= threshold ? 0 : (supplier?.deliveryMinor ?? 0));
    if (by !== 0) faults.push({ kind: "delivery", at, by });
  }
  return faults;
}

function goodsFaults(question: PlanQuestion, order: PlanOrder): { goods: number; wrong: PlanFault[] } {
  const wrong: PlanFault[] = [];
  let goods = 0;
  for (const line of order.lines) {
    const offer = question.offers.find(({ id }) => id === line.offerId);
    if (offer === undefined || offer.supplierId !== order.supplierId) {
      wrong.push({ kind: "packs", at: line.offerId, by: line.packs });
      continue;
    }
    wrong.push(...lineFaults(question, offer, line.packs, order.week, line.goodsMinor));
    goods += priceOf(offer, line.packs);
  }
  return { goods, wrong };
}

function lineFaults(
  question: PlanQuestion,
  offer: PlanOffer,
  packs: number,
  week: number,
  goodsMinor: number,
): PlanFault[] {
  const at = `${offer.id} in week ${week}`;
  const faults: PlanFault[] = [];
  const least = offer.steps?.[0]?.fromPacks ?? Number.POSITIVE_INFINITY;
  const most = offer.mostPacks ?? Number.POSITIVE_INFINITY;
  if (!Number.isSafeInteger(packs) || packs < Math.max(1, least) || packs > most) {
    faults.push({ kind: "packs", at, by: packs });
  }
  if (week + offer.leadWeeks >= question.weeks) faults.push({ kind: "late", at, by: 1 });
  const price = priceOf(offer, packs);
  if (price !== goodsMinor) faults.push({ kind: "goods", at, by: goodsMinor - price });
  return faults;
}

function cashFaults(question: PlanQuestion, plan: CostedPlan): PlanFault[] {
  const { limits, aim } = question;
  const all = aim.kind === "within" ? [...limits.cash, { throughWeek: 0, minor: aim.minor }] : limits.cash;
  return all.flatMap(({ throughWeek, minor }): PlanFault[] => {
    let spent = 0;
    for (const order of plan.orders) {
      if (order.week <= throughWeek) spent += order.goodsMinor + order.deliveryMinor;
    }
    return spent > minor ? [{ kind: "cash", at: `through week ${throughWeek}`, by: spent - minor }] : [];
  });
}

function standInFaults(question: PlanQuestion, plan: CostedPlan): PlanFault[] {
  const faults: PlanFault[] = [];
  const did = new Map<string, number>();
  for (const { fromSupplyId, toSupplyId, week, units } of plan.standIns) {
    const at = `${fromSupplyId} for ${toSupplyId} in week ${week}`;
    const pair = question.substitutes.find(
      (each) => each.fromSupplyId === fromSupplyId && each.toSupplyId === toSupplyId,
    );
    const to = question.supplies.find(({ id }) => id === toSupplyId);
    const most = (to?.use[week] ?? 0) + (week === 0 ? Math.max(0, -(to?.stock ?? 0)) : 0);
    const need = `${toSupplyId} in week ${week}`;
    const sum = (did.get(need) ?? 0) + units;
    did.set(need, sum);
    const slack = TINY * Math.max(1, most);
    if (pair === undefined || units < 0 || sum > most + slack)
      faults.push({ kind: "stand-in", at, by: sum - most });
    const end = plan.stock.find(({ supplyId }) => supplyId === fromSupplyId)?.end[week] ?? Number.NaN;
    const isFromNothing = units > slack && !(end >= -TINY * Math.max(1, Math.abs(end), units));
    if (isFromNothing) faults.push({ kind: "lent-too-much", at, by: -end });
  }
  return faults;
}

function stockFaults(question: PlanQuestion, plan: CostedPlan): PlanFault[] {
  const litres = new Array<number>(question.weeks).fill(0);
  const faults = question.supplies.flatMap((supply) => pathFaults(question, plan, supply, litres));
  const room = question.limits.litres ?? Number.POSITIVE_INFINITY;
  litres.forEach((sum, week) => {
    if (sum > room + TINY * Math.max(1, room))
      faults.push({ kind: "room", at: `week ${week}`, by: sum - room });
  });
  return faults;
}

/** Walks through one supply's weeks; adds what it takes to `litres`. */
function pathFaults(
  question: PlanQuestion,
  plan: CostedPlan,
  supply: PlanSupply,
  litres: number[],
): PlanFault[] {
  const faults: PlanFault[] = [];
  const path = plan.stock.find(({ supplyId }) => supplyId === supply.id);
  let there = supply.stock;
  let withoutOrders = supply.stock;
  for (let week = 0; week < question.weeks; week++) {
    const at = `${supply.id} in week ${week}`;
    const arrives = supply.arrivals[week] ?? 0;
    there += arrives + unitsArriving(question, plan, supply.id, week);
    withoutOrders += arrives;
    const slack = TINY * Math.max(1, Math.abs(there));
    if (differ(there, path?.after[week])) faults.push({ kind: "stock", at, by: there });
    const most = Math.max(withoutOrders, supply.most[week] ?? Number.NaN);
    if (!(there <= most + slack)) faults.push({ kind: "most-stock", at, by: there - most });
    litres[week] = (litres[week] ?? 0) + supply.litres * Math.max(0, there);
    const use = supply.use[week] ?? 0;
    there -= use + unitsLent(question, plan, supply.id, week);
    withoutOrders -= use;
    if (differ(there, path?.end[week])) faults.push({ kind: "stock", at, by: there });
  }
  return faults;
}

function unitsArriving(question: PlanQuestion, plan: CostedPlan, supplyId: string, week: number): number {
  let units = 0;
  for (const order of plan.orders) {
    for (const { offerId, packs } of order.lines) {
      const offer = question.offers.find(({ id }) => id === offerId);
      if (offer?.supplyId === supplyId && order.week + offer.leadWeeks === week)
        units += packs * offer.unitsPerPack;
    }
  }
  return units;
}

/** What a supply gives to others in a week, less what it is spared. */
function unitsLent(question: PlanQuestion, plan: CostedPlan, supplyId: string, week: number): number {
  let units = 0;
  for (const each of plan.standIns) {
    if (each.week !== week) continue;
    if (each.toSupplyId === supplyId) units -= each.units;
    if (each.fromSupplyId !== supplyId) continue;
    const pair = question.substitutes.find(
      ({ fromSupplyId, toSupplyId }) => fromSupplyId === supplyId && toSupplyId === each.toSupplyId,
    );
    units += each.units * (pair?.ratio ?? Number.NaN);
  }
  return units;
}

/** With the aim "urgent", this week's order may hold only what lacks before the next one could arrive. */
function urgentFaults(question: PlanQuestion, plan: CostedPlan): PlanFault[] {
  if (question.aim.kind !== "urgent") return [];
  return plan.orders
    .filter(({ week }) => week === 0)
    .flatMap(({ supplierId, lines }) => {
      const sold = question.offers.filter((offer) => offer.supplierId === supplierId && offer.steps !== null);
      const least = question.suppliers.find(({ id }) => id === supplierId)?.leastOrderMinor ?? 0;
      const urgent = sold.reduce((sum, offer) => sum + priceOf(offer, packsInNeed(question, offer)), 0);
      // An order below the least may be filled up.
      if (urgent > 0 && urgent < least) return [];
      return lines.flatMap(({ offerId, packs }): PlanFault[] => {
        const offer = sold.find(({ id }) => id === offerId);
        const by = packs - (offer === undefined ? 0 : packsInNeed(question, offer));
        return by > 0 ? [{ kind: "not-urgent", at: offerId, by }] : [];
      });
    });
}

function packsInNeed(question: PlanQuestion, { supplyId, unitsPerPack, steps }: PlanOffer): number {
  let next = question.weeks;
  for (const other of question.offers) {
    const weeks = question.suppliers.find(({ id }) => id === other.supplierId)?.orderWeeks ?? [];
    const week = weeks.findIndex((isOpen, index) => index > 0 && isOpen);
    if (other.supplyId === supplyId && week > 0) next = Math.min(next, week + other.leadWeeks);
  }
  const supply = question.supplies.find(({ id }) => id === supplyId);
  let there = supply?.stock ?? 0;
  let lacking = 0;
  for (let week = 0; week < next; week++) {
    there += (supply?.arrivals[week] ?? 0) - (supply?.use[week] ?? 0);
    lacking = Math.max(lacking, (supply?.wanted[week] ?? 0) - there);
  }
  const packs = Math.ceil(lacking / unitsPerPack - TINY);
  return packs > 0 ? Math.max(packs, steps?.[0]?.fromPacks ?? 1) : 0;
}

function costFaults(question: PlanQuestion, plan: CostedPlan): PlanFault[] {
  let total = 0;
  for (const order of plan.orders) {
    const supplier = question.suppliers.find(({ id }) => id === order.supplierId);
    total += order.goodsMinor + order.deliveryMinor + (supplier?.handlingMinor ?? 0);
  }
  for (const { supplyId, end } of plan.stock) {
    const supply = question.supplies.find(({ id }) => id === supplyId);
    if (supply === undefined) continue;
    end.forEach((units, week) => {
      if (units > 0) total += supply.holdingMinor * units;
      const missing = (supply.wanted[week] ?? 0) - units;
      if (missing > 0) total += supply.shortMinor * missing;
    });
    total -= supply.endValueMinor * (end[question.weeks - 1] ?? 0);
  }
  const by = plan.costs.totalMinor - total;
  return Math.abs(by) > TINY * Math.max(1, Math.abs(total)) ? [{ kind: "costs", at: "total", by }] : [];
}

const differ = (a: number, b: number | undefined): boolean =>
  b === undefined || !(Math.abs(a - b) <= TINY * Math.max(1, Math.abs(a)));
