import type { ClosedCalendar } from "#lib/forecast/open-days";
import { drawnUse, type UseForecast } from "#lib/replenishment/simulation/drawn-use";
import type { Random } from "#lib/statistics/normal-draw";
import type { Day } from "#lib/units/day";

/** What a supply's use is played from: draws around a forecast, or the past as it was. */
export type UseSource =
  | ({ readonly kind: "drawn" } & UseForecast)
  /** use of each day, in use units; below 0 is what came back */
  | { readonly kind: "replayed"; readonly perDay: readonly number[] };

/** The use that a shop has to meet, whatever it orders. */
export type ShopUse = {
  readonly firstDay: Day;
  readonly days: number;
  readonly calendar: ClosedCalendar;
  readonly supplies: readonly { readonly supplyId: string; readonly source: UseSource }[];
};

/** Everything of one run that is left to chance. It knows nothing of orders, so that settings can be played alike. */
export type RunDraws = {
  /** use of each supply, in the order of the supplies, on each day */
  readonly use: readonly (readonly number[])[];
  /** for each supplier, by place in the list, and day of order: which lead time it gets, from 0 up to 1 */
  readonly leadTimeChances: readonly (readonly number[])[];
};

/**
 * Prepares the draws of runs. Supplies are drawn apart from each other.
 *
 * @param use supplies and days
 * @param suppliers how many suppliers at most
 * @returns a function that draws one run
 * @throws RangeError when there are no days, or a past is shorter than the days played
 * @example runDraws(use, 2)(random).use[0] // [3, 0, 1, ...]
 */
export function runDraws(use: ShopUse, suppliers: number): (random: Random) => RunDraws {
  if (!(Number.isSafeInteger(use.days) && use.days > 0)) {
    throw new RangeError(`runDraws requires whole days above 0, got ${use.days}`);
  }
  const draws = use.supplies.map(({ supplyId, source }) => {
    if (source.kind === "drawn") return drawnUse(source, use, use.calendar);
    if (source.perDay.length < use.days) {
      throw new RangeError(`runDraws requires ${use.days} days of ${supplyId}, got ${source.perDay.length}`);
    }
    return () => source.perDay;
  });
  return (random) => ({
    use: draws.map((draw) => draw(random)),
    leadTimeChances: Array.from({ length: suppliers }, () =>
      Array.from({ length: use.days }, () => random()),
    ),
  });
}
