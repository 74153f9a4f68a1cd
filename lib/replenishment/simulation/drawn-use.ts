import type { ClosedCalendar } from "#lib/forecast/open-days";
import type { SumSpread } from "#lib/forecast/sum-spread";
import { expectedUse, type UsePath } from "#lib/forecast/use-path";
import { spreadParts } from "#lib/replenishment/simulation/spread-parts";
import { gammaDraw } from "#lib/statistics/gamma-draw";
import type { Random } from "#lib/statistics/normal-draw";
import { poissonDraw } from "#lib/statistics/poisson-draw";
import { addDays, type Day, daysBetween } from "#lib/units/day";

const DAYS_A_WEEK = 7;
/** Of less a day nothing comes. */
const NOTHING = 1e-9;

/** A forecast to draw use from. */
export type UseForecast = { readonly path: UsePath; readonly spread: SumSpread };

/**
 * Prepares draws of what might be used on each day, so that the sum over some weeks has the mean of the path and the
 * variance of the spread: a factor of the run and one of each week, gamma distributed with mean 1, and given these, uses
 * that come by chance, whole pieces as negative binomial counts (Poisson where one use takes one piece or less), amounts
 * as gamma, each with the variance perUse x mean. Such days add up to weeks of the same kind.
 *
 * @param forecast expected use a week and how far sums can be off
 * @param span first day, not before the path, and how many days
 * @param calendar closed days, on which nothing is used
 * @returns a function that draws one run: use of each day, in the unit of the path
 * @throws RangeError when the span begins before the path
 * @see compound Poisson and gamma distributions with a common scale add up (from memory; moments in the tests)
 * @example drawnUse(forecast, { firstDay: day("2026-11-25"), days: 364 }, [])(random) // [3, 0, 1, ...]
 */
export function drawnUse(
  { path, spread }: UseForecast,
  { firstDay, days }: { readonly firstDay: Day; readonly days: number },
  calendar: ClosedCalendar,
): (random: Random) => number[] {
  const { common, weekly } = spreadParts(spread.dispersions);
  const offset = daysBetween(path.firstWeek, firstDay);
  const expected = Array.from({ length: days }, (_, at) =>
    expectedUse(path, { from: addDays(firstDay, at), until: addDays(firstDay, at + 1) }, calendar),
  );
  const ofDay = spread.whole ? countDraw(spread.perUse) : amountDraw(spread.perUse);
  return (random) => {
    const runFactor = factorDraw(common, random);
    let weekFactor = factorDraw(weekly, random);
    return expected.map((mean, at) => {
      if (at > 0 && (offset + at) % DAYS_A_WEEK === 0) weekFactor = factorDraw(weekly, random);
      const day = mean * runFactor * weekFactor;
      return day < NOTHING ? 0 : ofDay(day, random);
    });
  };
}

function factorDraw(squaredVariation: number, random: Random): number {
  return squaredVariation > 0
    ? gammaDraw({ shape: 1 / squaredVariation, scale: squaredVariation }, random)
    : 1;
}

function countDraw(perUse: number): (mean: number, random: Random) => number {
  // Mixing a Poisson count by a gamma mean of this scale makes its variance perUse x mean.
  const scale = perUse - 1;
  return (mean, random) =>
    poissonDraw(scale > 0 ? gammaDraw({ shape: mean / scale, scale }, random) : mean, random);
}

function amountDraw(perUse: number): (mean: number, random: Random) => number {
  return (mean, random) => (perUse > 0 ? gammaDraw({ shape: mean / perUse, scale: perUse }, random) : mean);
}
