import type { ItemTypeHistory, ShopHistory, SupplyUseHistory } from "#lib/forecast/shop/shop-history";
import type { ShopWeek } from "#lib/forecast/shop-weeks";
import { addDays, type Day, day } from "#lib/units/day";
import { seeded } from "../seeded-counts";

/** The Monday on which the histories end: the running week begins. */
export const RUNNING_WEEK = day("2026-11-23");

/** First day of the week that was so many weeks ago, the newest full week being 1. */
export function weeksAgo(weeks: number): Day {
  return addDays(RUNNING_WEEK, -7 * weeks);
}

/** Full weeks of a shop up to the running one, oldest first. */
export function fullWeeks(count: number): ShopWeek[] {
  return Array.from({ length: count }, (_, index) => ({
    weekStart: weeksAgo(count - index),
    nextWeekStart: weeksAgo(count - index - 1),
    closed: false,
    partial: false,
  }));
}

/** An item type that goes out one piece a parcel. */
export function itemType(
  id: string,
  pieces: readonly number[],
  change: Partial<ItemTypeHistory> = {},
): ItemTypeHistory {
  return {
    id,
    pieces,
    parcels: pieces,
    firstDays: { parcels: 0, pieces: 0 },
    piecesAtOnce: 1,
    massGrams: null,
    ...change,
  };
}

/** A shop that has been open all the time, without events and without a guess. */
export function shopHistory(
  itemTypes: readonly ItemTypeHistory[],
  change: Partial<ShopHistory> = {},
): ShopHistory {
  return {
    today: addDays(RUNNING_WEEK, 2),
    weekStartsOn: 1,
    calendar: [],
    weeks: fullWeeks(itemTypes[0]?.pieces.length ?? 0),
    firstDays: 0,
    itemTypes,
    events: [],
    guessedParcels: null,
    serviceLevel: 0.95,
    ...change,
  };
}

/** A supply in sheets that no recipe takes. */
export function supplyUse(
  id: string,
  used: readonly number[],
  change: Partial<SupplyUseHistory> = {},
): SupplyUseHistory {
  return {
    id,
    used,
    firstDaysUsed: 0,
    perPiece: new Map(),
    perUse: null,
    whole: false,
    horizonWeeks: 3,
    ...change,
  };
}

/** So many weeks of the same number. */
export function steady(weeks: number, value: number): number[] {
  return new Array<number>(weeks).fill(value);
}

/** Sold in two weeks of five for 60 weeks, a few at once, and then not at all for 38. */
export function dyingSeries(seed: number): number[] {
  const { uniform, count } = seeded(7 * seed);
  const alive = Array.from({ length: 60 }, () => (uniform() < 0.4 ? 1 + count(3) : 0));
  return [...alive, ...steady(38, 0)];
}
