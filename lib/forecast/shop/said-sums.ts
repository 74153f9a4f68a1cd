import type { OpenWeek } from "#lib/forecast/shop/open-weeks";
import type { SaidSum } from "#lib/forecast/shop/subject-forecast";
import { type SumLook, sumDispersions } from "#lib/forecast/sum-looks";
import { type SumSpread, sumQuantile } from "#lib/forecast/sum-spread";

/** Chances of the band that a sum should lie in. */
const LOW = 0.1;
const HIGH = 0.9;

/** What is asked of past sums. */
export type SaidSumsQuestion = {
  readonly looks: readonly SumLook[];
  readonly spread: SumSpread;
  readonly pooled: readonly number[];
  readonly horizon: number;
  readonly chance: number;
  /** open weeks that the looks count, the series' first one at the front */
  readonly weeks: readonly OpenWeek[];
  /** season, events and open days of those weeks: what a week as usual is multiplied by */
  readonly factors: readonly number[];
};

/**
 * What would have been said of past sums: expected, the band and what would have been enough, each by what was known
 * then of how far off such forecasts are; and what came, in the weeks as they really were.
 *
 * @param question looks back of the route taken
 * @returns oldest first, whole sums only
 */
export function saidSums(question: SaidSumsQuestion): SaidSum[] {
  const { looks, spread, pooled, horizon, chance, weeks, factors } = question;
  return looks.flatMap(({ origin, expected, actual }): SaidSum[] => {
    const first = weeks[origin];
    if (actual.length < horizon || first === undefined) return [];
    const then: SumSpread = {
      ...spread,
      dispersions: sumDispersions({ looks, perUse: spread.perUse, pooled, before: origin }),
    };
    const inFact = (totals: readonly number[]): number =>
      Array.from({ length: horizon }, (_, step) => {
        const asUsual = (totals[step] ?? 0) - (totals[step - 1] ?? 0);
        return asUsual * (factors[origin + step] ?? 1);
      }).reduce((total, each) => total + each, 0);
    const sum = { mean: inFact(expected), weeks: horizon };
    return [
      {
        from: first.weekStart,
        expected: sum.mean,
        low: sumQuantile(then, sum, LOW),
        high: sumQuantile(then, sum, HIGH),
        enough: sumQuantile(then, sum, chance),
        actual: inFact(actual),
      },
    ];
  });
}
