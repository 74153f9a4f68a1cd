import { seasonFactor } from "#lib/forecast/season-profile";
import type { OpenWeek } from "#lib/forecast/shop/open-weeks";
import type { ShopGround } from "#lib/forecast/shop/shop-ground";
import type { SupplyUseHistory } from "#lib/forecast/shop/shop-history";

/** A supply's use as it would be without season, planned events and closed days. */
export type SupplySeries = {
  /** use a full week as usual, oldest first, from the week of the first use on */
  readonly values: readonly number[];
  /** the open weeks of the values */
  readonly weeks: readonly OpenWeek[];
  /** how many open weeks of the shop lie before the first value */
  readonly start: number;
  /** season, events and open days of each of those weeks together */
  readonly factors: readonly number[];
  readonly comingFactors: readonly number[];
  /** what one use takes as a rule */
  readonly perUse: number;
  /** what today's recipes take for a piece of each item type, in the ground's order */
  readonly bill: readonly number[];
};

/**
 * Series of a supply: its use a week by today's recipes, each week set to what it would have been as usual. The season
 * and events of a supply are those of the item types that take it, in proportion.
 *
 * @param supply what the records know
 * @param ground the shop's ground
 * @throws RangeError when the history has not one number a week
 */
export function supplySeries(supply: SupplyUseHistory, ground: ShopGround): SupplySeries {
  const bill = ground.types.map(({ id }) => supply.perPiece.get(id) ?? 0);
  const weights = weightsOf(bill, ground);
  const factorAt = (place: number): number => {
    const week = ground.weeks[place];
    const bySeason = week === undefined ? 1 : week.openShare * seasonFactor(ground.season, week.weekStart);
    return weighted(weights, (type) => ground.types[type]?.factors[place] ?? 1) ?? bySeason;
  };
  const all = ground.weeks.map(({ index }, place) => {
    const used = supply.used[index];
    if (used === undefined) throw new RangeError(`supplySeries requires use of every week of ${supply.id}`);
    const factor = factorAt(place);
    return { value: factor > 0 ? used / factor : used, factor };
  });
  const first = all.findIndex(({ value }) => value > 0);
  const start = first < 0 ? all.length : first;
  const kept = all.slice(start);
  const values = kept.map(({ value }) => value);
  return {
    values,
    weeks: ground.weeks.slice(start),
    start,
    factors: kept.map(({ factor }) => factor),
    comingFactors: ground.coming.map(
      (weekStart, week) =>
        weighted(weights, (type) => ground.types[type]?.comingFactors[week] ?? 1) ??
        seasonFactor(ground.season, weekStart),
    ),
    perUse: supply.perUse ?? meanUse(values),
    bill,
  };
}

/**
 * What today's recipes say that each open week took.
 *
 * @param bill use units a piece of each item type, in the ground's order
 * @param ground the shop's ground
 * @returns one an open week, as usual, oldest first
 */
export function cardUse(bill: readonly number[], ground: ShopGround): number[] {
  return ground.weeks.map((_, place) =>
    bill.reduce((sum, amount, type) => sum + amount * (ground.types[type]?.pieces[place] ?? 0), 0),
  );
}

/** How much of the supply goes into each item type lately; empty where none takes it. */
function weightsOf(bill: readonly number[], ground: ShopGround): number[] {
  if (ground.types.length === 0) return [];
  // Before the first full week all item types count as sold alike.
  const shares = ground.weeks.length === 0 ? null : ground.levelAfter(ground.weeks.length).shares;
  const takes = bill.map((amount, type) => amount * (shares === null ? 1 : (shares[type] ?? 0)));
  const total = takes.reduce((sum, each) => sum + each, 0);
  return total > 0 ? takes.map((each) => each / total) : [];
}

function weighted(weights: readonly number[], factorOf: (type: number) => number): number | null {
  if (weights.length === 0) return null;
  return weights.reduce((sum, weight, type) => sum + weight * factorOf(type), 0);
}

/** What a week with use takes, for want of a recipe: uses are then taken to come one a week. */
function meanUse(values: readonly number[]): number {
  const uses = values.filter((value) => value > 0);
  return uses.length === 0 ? 1 : uses.reduce((sum, each) => sum + each, 0) / uses.length;
}
