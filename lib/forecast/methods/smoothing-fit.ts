import { bestSearch } from "#lib/forecast/methods/best-search";
import type { Series } from "#lib/forecast/methods/forecasting-method";
import { scaledState } from "#lib/forecast/methods/scaled-state";
import { combinations, leastOf, leastOfEachAlpha, type Residuals } from "#lib/forecast/methods/search-starts";
import { type SmoothingConstants, type SmoothingState, smooth } from "#lib/forecast/methods/smoothing";
import { ruleOf, type SmoothingRecipe, UNUSED_CONSTANTS } from "#lib/forecast/methods/smoothing-recipe";
import { leastSquares } from "#lib/statistics/least-squares";

/** What a fit may change: the constants alone, or the state before the first value as well. */
export type FitOf = "constants" | "constants-and-start";

/** Constants and the state before the first value. */
export type SmoothingFit = { readonly constants: SmoothingConstants; readonly start: SmoothingState };

type Bound = readonly [number, number];

/** Points of the grid that get a start of their own. */
const SETTLED = 40;
/** Searches from different starts. */
const SEARCHES = 4;
/** One step, hardly damped, settles the start at given constants: there the errors are nearly straight in it. */
const STATE_STEPS = 1;
const STATE_DAMPING = 1e-6;
/** No start lies further off than so many times the mean value. */
const STATE_BOUND: Bound = [-50, 50];
const FACTOR_BOUND: Bound = [0.01, 100];

/**
 * The constants, and if wished the start, with the least sum of squared one-step errors. The sum has more
 * than one valley, so the search sets out from the best few points of a grid of constants; those that do best
 * from the method's own start are first given the start that fits them.
 *
 * @param recipe of the method
 * @param series at least as long as the method needs
 * @param fitOf what may change
 * @returns constants and start
 */
export function smoothingFit(recipe: SmoothingRecipe, series: Series, fitOf: FitOf): SmoothingFit {
  const seen = series.values.slice(recipe.skipped?.(series) ?? 0);
  // Searched in units of the series' size, so that one step suits constants and states.
  const scale = meanSize(seen) || meanSize(series.values) || 1;
  const start = scaledState(recipe.start(series), 1 / scale, recipe.season);
  const values = seen.map((value) => value / scale);
  const count = recipe.constants.length;
  const constantsOf = constantReader(recipe);
  const residuals: Residuals = (found) => {
    const state = found.length === count ? start : stateOf(found, count);
    return smooth(values, ruleOf(recipe, constantsOf(found)), state).errors;
  };
  const states = [start.level, start.trend, ...start.seasons];
  const stateBounds = states.map((_, index) => stateBound(recipe, index));
  const bounds = recipe.constants.map((constant) => constant.bounds);
  const isStartFitted = fitOf === "constants-and-start";
  const grid = combinations(recipe.constants.map((constant) => constant.starts));
  const froms = isStartFitted
    ? leastOf(grid, residuals, SETTLED).map((from) => [
        ...from,
        ...settledStates(residuals, from, { states, stateBounds }),
      ])
    : grid;
  const best = bestSearch(
    { residuals, bounds: isStartFitted ? [...bounds, ...stateBounds] : bounds },
    leastOf(leastOfEachAlpha(froms, residuals), residuals, SEARCHES),
  );
  const state = isStartFitted ? stateOf(best.parameters, count) : start;
  return { constants: constantsOf(best.parameters), start: scaledState(state, scale, recipe.season) };
}

function meanSize(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + Math.abs(value), 0) / values.length;
}

/** At given constants the best start is nearly a linear question. */
function settledStates(
  residuals: Residuals,
  from: readonly number[],
  { states, stateBounds }: { readonly states: readonly number[]; readonly stateBounds: readonly Bound[] },
): readonly number[] {
  return leastSquares({
    residuals: (found) => residuals([...from, ...found]),
    start: states,
    bounds: stateBounds,
    steps: STATE_STEPS,
    damping: STATE_DAMPING,
  }).parameters;
}

function stateBound({ constants, season }: SmoothingRecipe, index: number): Bound {
  if (index === 1 && !constants.some(({ name }) => name === "betaStar")) return [0, 0];
  return season === "multiplicative" && index > 1 ? FACTOR_BOUND : STATE_BOUND;
}

function constantReader(recipe: SmoothingRecipe): (found: readonly number[]) => SmoothingConstants {
  const place = (name: keyof SmoothingConstants): number =>
    recipe.constants.findIndex((constant) => constant.name === name);
  const [alpha, betaStar, phi, gamma] = [place("alpha"), place("betaStar"), place("phi"), place("gamma")];
  return (found) => ({
    alpha: found[alpha] ?? UNUSED_CONSTANTS.alpha,
    betaStar: found[betaStar] ?? UNUSED_CONSTANTS.betaStar,
    phi: found[phi] ?? UNUSED_CONSTANTS.phi,
    gamma: found[gamma] ?? UNUSED_CONSTANTS.gamma,
  });
}

function stateOf(found: readonly number[], count: number): SmoothingState {
  return { level: found[count] ?? 0, trend: found[count + 1] ?? 0, seasons: found.slice(count + 2) };
}
