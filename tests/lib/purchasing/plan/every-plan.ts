import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";

/**
 * The least cost of a small question by trying every plan: packs of 0 to the offer's most in each week, stand-ins
 * in steps of a half. Written apart from the program: it shares no code with it.
 *
 * @returns minor units and this week's packs by offer, null where no plan keeps the limits
 */
export function everyPlan(question: PlanQuestion): { cost: number; peak: number } | null {
  const { weeks, offers, suppliers } = question;
  const places: { offer: number; week: number; supplier: number; most: number }[] = [];
  offers.forEach((offer, index) => {
    const supplier = suppliers.findIndex(({ id }) => id === offer.supplierId);
    for (let week = 0; week + offer.leadWeeks < weeks; week++) {
      if (!suppliers[supplier]?.orderWeeks[week]) continue;
      places.push({ offer: index, week, supplier, most: offer.mostPacks ?? Number.NaN });
    }
  });
  let best: { cost: number; peak: number } | null = null;
  const packs = places.map(() => 0);
  const table = goodsTable(question);
  // biome-ignore lint/complexity/noExcessiveCognitiveComplexity: plain loops in one place are what it is trusted for
  const visit = (at: number): void => {
    if (at < places.length) {
      for (let count = 0; count <= (places[at]?.most ?? 0); count++) {
        packs[at] = count;
        visit(at + 1);
      }
      packs[at] = 0;
      return;
    }
    const ordered = ordersCost(question, table, places, packs);
    if (ordered === null) return;
    // Stock costs nothing less than the worth of all that ever comes in: dearer orders need no closer look.
    if (best !== null && ordered - worth(question, places, packs) > best.cost) return;
    const stocked = stockCost(question, places, packs);
    if (stocked === null) return;
    const cost = ordered + stocked.cost;
    if (best === null || cost < best.cost) best = { cost, peak: stocked.peak };
  };
  visit(0);
  return best;
}

type Place = { offer: number; week: number; supplier: number };

/** Worth at the end of all that was there or came in, as if none of it were used. */
function worth({ supplies, offers }: PlanQuestion, places: Place[], packs: number[]): number {
  let sum = 0;
  for (const { id, stock, arrivals, endValueMinor } of supplies) {
    let units = Math.max(0, stock) + arrivals.reduce((total, each) => total + each, 0);
    places.forEach((place, at) => {
      const offer = offers[place.offer];
      if (offer?.supplyId === id) units += (packs[at] ?? 0) * offer.unitsPerPack;
    });
    sum += units * endValueMinor;
  }
  return sum;
}

function price(
  steps: readonly { fromPacks: number; priceMinor: number }[],
  kind: string,
  packs: number,
): number {
  if (packs === 0) return 0;
  if (packs < (steps[0]?.fromPacks ?? 0)) return Number.POSITIVE_INFINITY;
  const at = (pack: number) => steps.filter((step) => step.fromPacks <= pack).at(-1)?.priceMinor ?? 0;
  if (kind === "all-units") return packs * at(packs);
  let sum = 0;
  for (let pack = 1; pack <= packs; pack++)
    sum += pack < (steps[0]?.fromPacks ?? 0) ? (steps[0]?.priceMinor ?? 0) : at(pack);
  return sum;
}

/** Goods of 0, 1, 2 .. packs of each offer, worked out once. */
const goodsTable = ({ offers }: PlanQuestion): number[][] =>
  offers.map(({ steps, kind, mostPacks }) =>
    Array.from({ length: (mostPacks ?? 0) + 1 }, (_, packs) => price(steps ?? [], kind, packs)),
  );

function ordersCost(
  { weeks, suppliers, limits, aim }: PlanQuestion,
  table: number[][],
  places: Place[],
  packs: number[],
): number | null {
  const goods = new Array<number>(suppliers.length * weeks).fill(0);
  const counts = new Array<number>(suppliers.length * weeks).fill(0);
  places.forEach(({ offer, supplier, week }, at) => {
    const order = supplier * weeks + week;
    const count = packs[at] ?? 0;
    goods[order] = (goods[order] ?? 0) + (table[offer]?.[count] ?? Number.NaN);
    counts[order] = (counts[order] ?? 0) + count;
  });
  const spent = new Array<number>(weeks).fill(0);
  let total = 0;
  for (let order = 0; order < counts.length; order++) {
    const terms = suppliers[Math.floor(order / weeks)];
    const sum = goods[order] ?? 0;
    if (counts[order] === 0) continue;
    if (terms === undefined || sum === Number.POSITIVE_INFINITY || sum < (terms.leastOrderMinor ?? 0))
      return null;
    const delivery = terms.freeFromMinor !== null && sum >= terms.freeFromMinor ? 0 : terms.deliveryMinor;
    spent[order % weeks] = (spent[order % weeks] ?? 0) + sum + delivery;
    total += sum + delivery + terms.handlingMinor;
  }
  const caps = aim.kind === "within" ? [...limits.cash, { throughWeek: 0, minor: aim.minor }] : limits.cash;
  const isKept = caps.every(({ throughWeek, minor }) => {
    const sum = spent.slice(0, throughWeek + 1).reduce((all, each) => all + each, 0);
    return sum <= minor;
  });
  return isKept ? total : null;
}

function stockCost(
  question: PlanQuestion,
  places: Place[],
  packs: number[],
): { cost: number; peak: number } | null {
  const pair = question.substitutes[0];
  if (pair === undefined) return pathCost(question, places, packs, []);
  const to = question.supplies.find(({ id }) => id === pair.toSupplyId);
  let best: { cost: number; peak: number } | null = null;
  const units = new Array<number>(question.weeks).fill(0);
  const visit = (week: number): void => {
    if (week === question.weeks) {
      const found = pathCost(question, places, packs, units);
      if (found !== null && (best === null || found.cost < best.cost)) best = found;
      return;
    }
    const most = (to?.use[week] ?? 0) + (week === 0 ? Math.max(0, -(to?.stock ?? 0)) : 0);
    for (let each = 0; each <= most + 1e-9; each += 0.5) {
      units[week] = each;
      visit(week + 1);
    }
    units[week] = 0;
  };
  visit(0);
  return best;
}

// biome-ignore lint/complexity/noExcessiveCognitiveComplexity: plain loops in one place are what it is trusted for
function pathCost(
  { weeks, supplies, offers, substitutes, limits }: PlanQuestion,
  places: Place[],
  packs: number[],
  standIn: number[],
) {
  const pair = substitutes[0];
  const stock = supplies.map((supply) => supply.stock);
  const bare = supplies.map((supply) => supply.stock);
  let cost = 0;
  let peak = 0;
  for (let week = 0; week < weeks; week++) {
    let litres = 0;
    for (let index = 0; index < supplies.length; index++) {
      const supply = supplies[index];
      if (supply === undefined) continue;
      let there = (stock[index] ?? 0) + (supply.arrivals[week] ?? 0);
      let without = (bare[index] ?? 0) + (supply.arrivals[week] ?? 0);
      places.forEach((place, at) => {
        const offer = offers[place.offer];
        if (offer?.supplyId === supply.id && place.week + offer.leadWeeks === week) {
          there += (packs[at] ?? 0) * offer.unitsPerPack;
        }
      });
      if (there > Math.max(without, supply.most[week] ?? 0) + 1e-9) return null;
      litres += supply.litres * Math.max(0, there);
      there -= supply.use[week] ?? 0;
      without -= supply.use[week] ?? 0;
      const moved = standIn[week] ?? 0;
      if (pair?.toSupplyId === supply.id) there += moved;
      if (pair?.fromSupplyId === supply.id) there -= moved * pair.ratio;
      if (pair?.fromSupplyId === supply.id && moved > 0 && there < -1e-9) return null;
      stock[index] = there;
      bare[index] = without;
      cost +=
        supply.holdingMinor * Math.max(0, there) +
        supply.shortMinor * Math.max(0, (supply.wanted[week] ?? 0) - there);
      if (week === weeks - 1) cost -= supply.endValueMinor * there;
    }
    if (limits.litres !== null && litres > limits.litres + 1e-9) return null;
    peak = Math.max(peak, litres);
  }
  return { cost, peak };
}
