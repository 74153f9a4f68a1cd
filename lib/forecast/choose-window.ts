import { mean, sampleStandardDeviation } from "simple-statistics";
import type { ForecastMethod } from "#lib/forecast/forecast-method";
import { protectionErrors } from "#lib/forecast/protection-error";
import { rootMeanSquare } from "#lib/statistics/root-mean-square";

/** Fewer errors than this say too little to compare methods or to measure a spread. */
export const FEWEST_ERRORS = 8;
/** About a month, two months and a quarter of a year; common practice, no source. */
const WINDOWS = [4, 8, 13];

/** A method with what its backtest showed, in the unit of the values. */
export type TriedMethod = ForecastMethod & {
  readonly meanAbsoluteError: number;
  readonly rootMeanSquareError: number;
};

/** The method taken, and why. */
export type WindowChoice =
  | { readonly kind: "compared"; readonly method: ForecastMethod; readonly tried: readonly TriedMethod[] }
  | { readonly kind: "too-few-to-compare"; readonly method: ForecastMethod }
  | { readonly kind: "too-few-weeks"; readonly method: ForecastMethod };

/**
 * Choice of the moving average: every method that the history allows is tried from the same past
 * weeks on, and judged by its error of the SUM over the protection interval. Of those that are no
 * worse than the best within its noise (one standard error of the paired difference, in absolute and
 * in squared errors), the simple before the weighted and the shorter before the longer is taken.
 *
 * @param values use a week, oldest first, at least 1
 * @param horizonWeeks weeks of use in the protection interval, above 0
 * @returns the method; `too-few-weeks` (under 4) is the mean of all there is
 * @throws RangeError when there is no week
 * @see Breiman, Friedman, Olshen and Stone (1984), Classification and Regression Trees, the one
 * standard error rule (from memory)
 * @example chooseWindow([10, 20], 2) // { kind: "too-few-weeks", method: { kind: "simple", window: 2 } }
 */
export function chooseWindow(values: readonly number[], horizonWeeks: number): WindowChoice {
  if (values.length === 0) {
    throw new RangeError("chooseWindow requires at least 1 week, got 0");
  }
  const [shortest = 4] = WINDOWS;
  if (values.length < shortest) {
    return { kind: "too-few-weeks", method: { kind: "simple", window: values.length } };
  }
  const windows = WINDOWS.filter(
    (window) => values.length - window - Math.ceil(horizonWeeks) + 1 >= FEWEST_ERRORS,
  );
  if (windows.length === 0) {
    return { kind: "too-few-to-compare", method: { kind: "simple", window: shortest } };
  }
  const firstOrigin = Math.max(...windows);
  const trials = windows
    .flatMap((window): ForecastMethod[] => [
      { kind: "simple", window },
      { kind: "weighted", window },
    ])
    .sort((a, b) => (a.kind === b.kind ? a.window - b.window : a.kind.localeCompare(b.kind)))
    .map((method) => ({ method, errors: protectionErrors({ values, method, horizonWeeks, firstOrigin }) }));
  return {
    kind: "compared",
    method: simplestWithinNoise(trials, horizonWeeks),
    tried: trials.map(triedMethod),
  };
}

type Trial = { readonly method: ForecastMethod; readonly errors: readonly number[] };

function simplestWithinNoise(trials: readonly Trial[], horizonWeeks: number): ForecastMethod {
  const best = trials.reduce((least, trial) => (absoluteError(trial) < absoluteError(least) ? trial : least));
  const taken = trials.find(
    (trial) =>
      withinNoise(trial, best, horizonWeeks, Math.abs) &&
      withinNoise(trial, best, horizonWeeks, (error) => error * error),
  );
  return (taken ?? best).method;
}

/** Sums that overlap are not independent: `horizon` of them are worth about one. */
function withinNoise(
  trial: Trial,
  best: Trial,
  horizonWeeks: number,
  loss: (error: number) => number,
): boolean {
  const differences = trial.errors.map((error, index) => loss(error) - loss(best.errors[index] ?? 0));
  const independent = differences.length / Math.ceil(horizonWeeks);
  return mean(differences) <= sampleStandardDeviation(differences) / Math.sqrt(independent);
}

function absoluteError(trial: Trial): number {
  return mean(trial.errors.map(Math.abs));
}

function triedMethod(trial: Trial): TriedMethod {
  return {
    ...trial.method,
    meanAbsoluteError: absoluteError(trial),
    rootMeanSquareError: rootMeanSquare(trial.errors),
  };
}
