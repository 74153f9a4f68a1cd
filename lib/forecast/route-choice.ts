import { mean, sampleStandardDeviation } from "simple-statistics";
import type { Route } from "#lib/forecast/route";
import { type SumLook, sumDispersions, sumLooks } from "#lib/forecast/sum-looks";
import { type SumSpread, sumQuantile } from "#lib/forecast/sum-spread";
import { pinballLoss } from "#lib/statistics/pinball-loss";

/** What routes are compared on. */
export type RouteQuestion = {
  /** the plainest first: of those that are no worse than the best within its noise the first is taken */
  readonly routes: readonly Route[];
  /** oldest first */
  readonly values: readonly number[];
  /** weeks of the sum that stock must last, a whole number from 1 */
  readonly horizon: number;
  /** chance that it lasts */
  readonly chance: number;
  readonly perUse: number;
  readonly whole: boolean;
  /** k that all series show for sums of 1, 2, 3, ... weeks */
  readonly pooled: readonly number[];
  /** how many values must have been seen at the first look */
  readonly firstOrigin: number;
};

/** A route with what looking back showed. */
export type TriedRoute = {
  readonly name: string;
  /** mean pinball loss of the quantile of the sum, in the unit of the series; null without a look */
  readonly pinball: number | null;
  /** mean absolute one-step error over the mean change from week to week (MASE); null without either */
  readonly scaledError: number | null;
  readonly looks: number;
};

/** The route taken, and what the others showed. */
export type RouteChoice = {
  readonly route: Route;
  readonly spread: SumSpread;
  readonly looks: readonly SumLook[];
  /** best first, the one taken among them */
  readonly tried: readonly TriedRoute[];
};

/** A sum of which fewer independent ones were seen says nothing of which route is better. */
const FEWEST_INDEPENDENT = 2;
/** Of a dozen routes one passes 2.9 standard errors by chance in one case of twenty (normal, Bonferroni). */
const STANDARD_ERRORS = 3;
/** Where two routes say nearly the same, less than this share is not worth the less plain one. A guess, no source. */
const LEAST_GAIN = 0.1;

type Trial = {
  readonly route: Route;
  readonly spread: SumSpread;
  readonly looks: readonly SumLook[];
  /** pinball losses of the quantile of each sum */
  readonly losses: readonly number[];
  /** how far the expected sum was off: a wide spread hides it from the quantile */
  readonly misses: readonly number[];
  readonly tried: TriedRoute;
};

/**
 * Choice of a route: each looks back from past weeks on the sum over the horizon, and is judged by the pinball loss of
 * its quantile and by how far its expected sum was off, both raised by what its fit took from the series. Of those that
 * are in neither worse than the best within its noise (three standard errors of the paired difference), or by less than a
 * tenth, the plainest is taken.
 *
 * @param question routes, series, and what is asked of them
 * @returns the route with its spread, and all that were tried
 * @throws RangeError when there is no route
 * @see Breiman, Friedman, Olshen and Stone (1984), Classification and Regression Trees, the standard error rule;
 * Akaike (1969), final prediction error, for the raise (both from memory)
 */
export function routeChoice(question: RouteQuestion): RouteChoice {
  const trials = question.routes.map((each) => trial(each, question));
  const [plainest] = trials;
  if (plainest === undefined) throw new RangeError("routeChoice requires a route, got none");
  const best = trials.reduce((least, each) => (lossOf(each) < lossOf(least) ? each : least));
  const nearest = trials.reduce((least, each) => (sumOf(each.misses) < sumOf(least.misses) ? each : least));
  const { horizon } = question;
  const taken = trials.find(
    (each) =>
      isWithinNoise(each.losses, best.losses, horizon) && isWithinNoise(each.misses, nearest.misses, horizon),
  );
  const { route, spread, looks } = taken ?? best;
  return {
    route,
    spread,
    looks,
    tried: trials.toSorted((a, b) => lossOf(a) - lossOf(b)).map(({ tried }) => tried),
  };
}

function trial(route: Route, question: RouteQuestion): Trial {
  const { values, horizon, chance, perUse, whole, pooled, firstOrigin } = question;
  const looks = sumLooks(route, values, { firstOrigin, steps: pooled.length });
  const spread = { perUse, whole, dispersions: sumDispersions({ looks, perUse, pooled }) };
  const seen = values.length;
  const raised = Math.sqrt((seen + route.freedom) / Math.max(1, seen - route.freedom));
  const sums = looks
    .filter(({ actual }) => actual.length >= horizon)
    .map(({ expected, actual }) => ({
      expected: expected[horizon - 1] ?? 0,
      actual: actual[horizon - 1] ?? 0,
    }));
  const losses = sums.map(({ expected, actual }) => {
    const quantile = sumQuantile(spread, { mean: expected, weeks: horizon }, chance);
    return raised * pinballLoss(quantile, actual, chance);
  });
  const misses = sums.map(({ expected, actual }) => raised * Math.abs(actual - expected));
  const tried: TriedRoute = {
    name: route.name,
    pinball: losses.length === 0 ? null : mean(losses),
    scaledError: scaledError(looks, values),
    looks: losses.length,
  };
  return { route, spread, looks, losses, misses, tried };
}

function lossOf({ tried }: Trial): number {
  return tried.pinball ?? Number.POSITIVE_INFINITY;
}

/** Sums that overlap are not independent: `horizon` of them are worth about one. */
function isWithinNoise(losses: readonly number[], best: readonly number[], horizon: number): boolean {
  const differences = losses.map((loss, index) => loss - (best[index] ?? 0));
  const independent = differences.length / horizon;
  if (independent < FEWEST_INDEPENDENT) return true;
  const noise = (STANDARD_ERRORS * sampleStandardDeviation(differences)) / Math.sqrt(independent);
  return mean(differences) <= Math.max(noise, LEAST_GAIN * mean([...best]));
}

function sumOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}

function scaledError(looks: readonly SumLook[], values: readonly number[]): number | null {
  const first = values.findIndex((value) => value !== 0);
  const changes = values
    .slice(first + 1)
    .map((value, index) => Math.abs(value - (values[first + index] ?? value)));
  const errors = looks
    .filter(({ actual }) => actual.length > 0)
    .map(({ expected, actual }) => Math.abs((actual[0] ?? 0) - (expected[0] ?? 0)));
  const change = changes.length === 0 ? 0 : mean(changes);
  return errors.length === 0 || change === 0 ? null : mean(errors) / change;
}
