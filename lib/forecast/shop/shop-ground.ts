import { type LevelAndShare, levelAndShare } from "#lib/forecast/level-and-share";
import { eventFactor } from "#lib/forecast/planned-event";
import { type SeasonProfile, seasonFactor, seasonProfile } from "#lib/forecast/season-profile";
import { type OpenWeek, openWeeks } from "#lib/forecast/shop/open-weeks";
import type { ItemTypeHistory, ShopHistory } from "#lib/forecast/shop/shop-history";
import { addDays, type Day, weekStart } from "#lib/units/day";

const DAYS_A_WEEK = 7;
/** Coming weeks that a path is made for: one round of the season. */
export const COMING_WEEKS = 53;

/** An item type as it would be without season, planned events and closed days. */
export type ItemTypeSeries = {
  readonly id: string;
  /** pieces a full week as usual, one an open week, oldest first */
  readonly pieces: readonly number[];
  /** parcels that it led, likewise */
  readonly parcels: readonly number[];
  /** season, events and open days of each open week together */
  readonly factors: readonly number[];
  /** season and events of each coming week */
  readonly comingFactors: readonly number[];
  /** place of the first open week with a piece; null without one */
  readonly firstSold: number | null;
  readonly piecesAtOnce: number;
  readonly massGrams: number | null;
};

/** What the forecasts of a shop's item types and supplies have in common. */
export type ShopGround = {
  readonly weeks: readonly OpenWeek[];
  /** first days of the coming weeks, the running week first */
  readonly coming: readonly Day[];
  readonly season: SeasonProfile;
  /** in the order of the history */
  readonly types: readonly ItemTypeSeries[];
  /** the shop's level and the types' shares after the first `count` open weeks, from 1 */
  readonly levelAfter: (count: number) => LevelAndShare;
};

/**
 * Ground of a shop's forecasts: the season that all item types share, and each item type's weeks with season, events
 * and closed days taken out.
 *
 * @param history what the records know
 * @returns the ground
 * @throws RangeError when a history has not one number a week
 */
export function shopGround(history: ShopHistory): ShopGround {
  const { itemTypes, events, calendar } = history;
  for (const type of itemTypes) {
    if (type.pieces.length !== history.weeks.length || type.parcels.length !== history.weeks.length) {
      throw new RangeError(`shopGround requires ${history.weeks.length} weeks of ${type.id}`);
    }
  }
  const first = weekStart(history.today, history.weekStartsOn);
  const coming = Array.from({ length: COMING_WEEKS }, (_, week) => addDays(first, week * DAYS_A_WEEK));
  const eventOf = (typeId: string, start: Day): number =>
    eventFactor(events, typeId, start, addDays(start, DAYS_A_WEEK));
  // A week in which planned events let nothing out says nothing of a usual one, as a closed week does not.
  const isTrading = (start: Day): boolean =>
    itemTypes.length === 0 || itemTypes.some((type) => eventOf(type.id, start) > 0);
  const weeks = openWeeks(history.weeks, calendar).filter((week) => isTrading(week.weekStart));
  const season = seasonProfile(
    weeks.map(({ index, weekStart: start, openShare }) => ({
      weekStart: start,
      total: itemTypes.reduce(
        (sum, type) => sum + cleared(type.pieces[index] ?? 0, openShare * eventOf(type.id, start)),
        0,
      ),
    })),
  );
  const types = itemTypes.map((type) => itemTypeSeries(type, { weeks, coming, season, eventOf }));
  const levels = new Map<number, LevelAndShare>();
  return {
    weeks,
    coming,
    season,
    types,
    levelAfter: (count) => {
      const known = levels.get(count) ?? levelAndShare(types.map(({ pieces }) => pieces.slice(0, count)));
      levels.set(count, known);
      return known;
    },
  };
}

type Factors = Pick<ShopGround, "weeks" | "coming" | "season"> & {
  readonly eventOf: (typeId: string, start: Day) => number;
};

function itemTypeSeries(type: ItemTypeHistory, { weeks, coming, season, eventOf }: Factors): ItemTypeSeries {
  const factorOf = (start: Day): number => seasonFactor(season, start) * eventOf(type.id, start);
  const factors = weeks.map(({ weekStart: start, openShare }) => openShare * factorOf(start));
  const asUsual = (counts: readonly number[]): number[] =>
    weeks.map(({ index }, place) => cleared(counts[index] ?? 0, factors[place] ?? 1));
  const pieces = asUsual(type.pieces);
  const firstSold = pieces.findIndex((each) => each > 0);
  return {
    id: type.id,
    pieces,
    parcels: asUsual(type.parcels),
    factors,
    comingFactors: coming.map(factorOf),
    firstSold: firstSold < 0 ? null : firstSold,
    piecesAtOnce: type.piecesAtOnce,
    massGrams: type.massGrams,
  };
}

/** What was sold, without what the week had more or less than others. An event of −100 % says nothing of a usual week. */
function cleared(sold: number, factor: number): number {
  return factor > 0 ? sold / factor : sold;
}
