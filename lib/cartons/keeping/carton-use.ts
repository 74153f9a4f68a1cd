import { addDays, type Day, daysBetween, maxDay } from "#lib/units/day";

/** Cartons used on a day; below zero where a correction gave some back. */
export type UseDay = { readonly day: Day; readonly cartons: number };

/** What was used of a carton, up to today and with today. */
export type CartonUse = {
  readonly lastUsed: Day | null;
  readonly in30Days: number;
  readonly in90Days: number;
  readonly in365Days: number;
  /** cartons a week, over 13 weeks or as long as it is watched */
  readonly weekly: number;
  /** cartons a year, over 365 days or as long as it is watched */
  readonly yearly: number;
  /** days with a record, today counted */
  readonly watchedDays: number;
};

const RATE_DAYS = 91;
const YEAR_DAYS = 365;
const WEEK_DAYS = 7;

/**
 * Sums the use of a carton over the windows that a seller asks about. Where it is watched for less than a window, rates
 * are over the days watched; closed days are not left out.
 *
 * @param useDays in any order, none after today
 * @param watchedFrom the first day whose use would be on record
 * @param today the last day counted
 * @returns sums and rates, never below zero
 * @throws RangeError if a day lies after today, or watching begins after today
 * @example cartonUse([{ day: day("2026-11-20"), cartons: 3 }], day("2026-01-01"), day("2026-11-26")).in30Days // 3
 */
export function cartonUse(useDays: readonly UseDay[], watchedFrom: Day, today: Day): CartonUse {
  const late = [watchedFrom, ...useDays.map((use) => use.day)].find((each) => each > today);
  if (late !== undefined) throw new RangeError(`cartonUse requires days up to ${today}, got ${late}`);
  const watchedDays = daysBetween(watchedFrom, today) + 1;
  const used = useDays.filter(({ cartons }) => cartons > 0).map((use) => use.day);
  const within = (days: number) => usedSince(useDays, addDays(today, 1 - days));
  return {
    lastUsed: used.length === 0 ? null : used.reduce(maxDay),
    in30Days: within(30),
    in90Days: within(90),
    in365Days: within(YEAR_DAYS),
    weekly: (within(RATE_DAYS) * WEEK_DAYS) / Math.min(RATE_DAYS, watchedDays),
    yearly: (within(YEAR_DAYS) * YEAR_DAYS) / Math.min(YEAR_DAYS, watchedDays),
    watchedDays,
  };
}

function usedSince(useDays: readonly UseDay[], from: Day): number {
  const sum = useDays.reduce((all, use) => (use.day >= from ? all + use.cartons : all), 0);
  return Math.max(0, sum);
}
