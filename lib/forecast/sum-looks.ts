import { dispersion } from "#lib/forecast/dispersion";
import type { Route } from "#lib/forecast/route";

/** What a route would have said from one past week on, and what then came: running totals of 1, 2, 3, ... steps. */
export type SumLook = {
  /** how many values had been seen */
  readonly origin: number;
  readonly expected: readonly number[];
  /** as many as the values reach */
  readonly actual: readonly number[];
};

/**
 * Looks back at the running totals that a route would have forecast. A forecast below 0 counts as 0: nothing is used
 * backwards.
 *
 * @param route how the forecast is made
 * @param values the series, oldest first
 * @param question from how many values seen on, and how many steps ahead
 * @returns looks oldest first
 * @example sumLooks(route, values, { firstOrigin: 13, steps: 3 })
 */
export function sumLooks(
  route: Pick<Route, "forecastAfter">,
  values: readonly number[],
  { firstOrigin, steps }: { readonly firstOrigin: number; readonly steps: number },
): SumLook[] {
  const looks: SumLook[] = [];
  for (let origin = firstOrigin; origin < values.length; origin += 1) {
    const said = route.forecastAfter(origin, steps).map((value) => Math.max(0, value));
    looks.push({
      origin,
      expected: runningTotals(said),
      actual: runningTotals(values.slice(origin, origin + steps)),
    });
  }
  return looks;
}

/** Running totals of a list: [1, 2, 3] gives [1, 3, 6]. */
export function runningTotals(values: readonly number[]): number[] {
  let total = 0;
  return values.map((value) => {
    total += value;
    return total;
  });
}

/** So many independent looks weigh as much as what is believed of all series together. A guess, no source. */
const LOOKS_OF_BELIEF = 10;

/**
 * Beyond it the quantiles of 90 and 95 % fall as k grows: more doubt would ask for less stock. Looks that said next to
 * nothing before a use give a k of thousands.
 */
const MOST_DISPERSION = 8;

/** What the spread of a route's sums is learnt from. */
export type DispersionQuestion = {
  readonly looks: readonly SumLook[];
  readonly perUse: number;
  /** k for sums of 1, 2, 3, ... steps that all series together show */
  readonly pooled: readonly number[];
  /** only what had come by then: the look's last step lies before it */
  readonly before?: number;
};

/**
 * k for sums of 1, 2, 3, ... steps: what the looks showed, drawn towards what all series show while the looks are few,
 * and raised while the looks in all are few, as a spread that is itself uncertain makes the tail longer.
 *
 * k = (own n / (n + 10) + pooled 10 / (n + 10)) (1 + 2 / n), at most 8; n independent looks (sums that overlap count in
 * proportion)
 *
 * @param question looks, what one use takes, the pooled k
 * @returns one a step, as many as `pooled` has
 * @see for the last factor: variance of Student's t against the normal distribution, n / (n - 2) = 1 + 2 / n + ...
 */
export function sumDispersions(question: DispersionQuestion): number[] {
  const { looks, perUse, pooled, before = Number.POSITIVE_INFINITY } = question;
  return pooled.map((believed, index) => {
    const step = index + 1;
    const past = looks
      .filter(({ origin, actual }) => actual.length >= step && origin + step <= before)
      .map(({ expected, actual }) => ({ forecast: expected[index] ?? 0, actual: actual[index] ?? 0 }));
    const independent = past.length / step;
    const share = independent / (independent + LOOKS_OF_BELIEF);
    const raised = 1 + 2 / Math.max(1, independent);
    return Math.min(MOST_DISPERSION, (share * dispersion(past, perUse) + (1 - share) * believed) * raised);
  });
}

/**
 * k for sums of 1, 2, 3, ... steps that many series show together, each weighing the same.
 *
 * @param series looks of each and what one use takes
 * @param steps how many
 * @param otherwise taken where no series has been looked back at
 */
export function pooledDispersions(
  series: readonly { readonly looks: readonly SumLook[]; readonly perUse: number }[],
  { steps, otherwise }: { readonly steps: number; readonly otherwise: (step: number) => number },
): number[] {
  return Array.from({ length: steps }, (_, index) => {
    const found = series.flatMap(({ looks, perUse }) => {
      const past = looks
        .filter(({ actual }) => actual.length > index)
        .map(({ expected, actual }) => ({ forecast: expected[index] ?? 0, actual: actual[index] ?? 0 }));
      return past.some(({ forecast }) => forecast > 0) ? [dispersion(past, perUse)] : [];
    });
    return found.length === 0
      ? otherwise(index + 1)
      : found.reduce((sum, each) => sum + each, 0) / found.length;
  });
}
