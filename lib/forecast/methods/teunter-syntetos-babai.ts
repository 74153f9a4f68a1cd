import { bestSearch } from "#lib/forecast/methods/best-search";
import { flatForecaster } from "#lib/forecast/methods/flat-forecaster";
import {
  type Forecaster,
  type ForecastingMethod,
  parameter,
  requireValues,
  type Series,
} from "#lib/forecast/methods/forecasting-method";

const BOUNDS = [
  [0.01, 0.5],
  [0.01, 0.5],
] as const;
const STARTS = [
  [0.1, 0.1],
  [0.3, 0.05],
  [0.05, 0.3],
];

/**
 * Teunter, Syntetos and Babai's method: the chance of a use is smoothed in every period, its size when there
 * is one, so that what is no longer used fades. `start` is the chance before the first value: the share of
 * periods with a use where it is left out; `size` the size before it: that of the first use. A look back keeps
 * both, as it keeps the other parameters.
 *
 * @see Teunter, Syntetos and Babai (2011), European Journal of Operational Research 214 (from memory)
 * @example teunterSyntetosBabai.fixed({ values: [0, 4, 0, 4], seasonLength: 1 },
 *   { alphaSize: 0.1, alphaChance: 0.1 }).forecast(1)
 */
export const teunterSyntetosBabai: ForecastingMethod = {
  name: "size and chance",
  freedom: () => 4,
  fewestValues: () => 1,
  fixed: (series, parameters) => {
    requireValues(teunterSyntetosBabai, series);
    const alphaSize = parameter(parameters, "alphaSize", teunterSyntetosBabai.name);
    const alphaChance = parameter(parameters, "alphaChance", teunterSyntetosBabai.name);
    return chanceForecaster(series, { ...firstGuess(series), ...parameters, alphaSize, alphaChance });
  },
  fitted: (series) => {
    requireValues(teunterSyntetosBabai, series);
    const first = firstGuess(series);
    const chancesOf = ([alphaSize = 0, alphaChance = 0]: readonly number[]): Chances => ({
      alphaSize,
      alphaChance,
      ...first,
    });
    const residuals = (found: readonly number[]) => smoothedChance(series.values, chancesOf(found)).errors;
    const best = bestSearch({ residuals, bounds: BOUNDS }, STARTS);
    return chanceForecaster(series, chancesOf(best.parameters));
  },
};

type Chances = {
  readonly alphaSize: number;
  readonly alphaChance: number;
  readonly start: number;
  readonly size: number;
};

function firstGuess({ values }: Series): { readonly start: number; readonly size: number } {
  const used = values.filter((value) => value !== 0);
  return { start: used.length / values.length, size: used[0] ?? 0 };
}

function chanceForecaster({ values }: Series, chances: Chances): Forecaster {
  return flatForecaster({
    values,
    parameters: chances,
    errors: smoothedChance(values, chances).errors,
    levelAfter: (seen) => smoothedChance(seen, chances).rate,
    varianceGrowth: null,
  });
}

/** Use a step after the newest value, and the errors of what was said before each but the first. */
function smoothedChance(
  values: readonly number[],
  { alphaSize, alphaChance, ...first }: Chances,
): { readonly rate: number; readonly errors: number[] } {
  let size = first.size;
  let chance = first.start;
  const errors: number[] = [];
  for (const value of values.slice(1)) {
    errors.push(value - size * chance);
    if (value !== 0) size += alphaSize * (value - size);
    chance += alphaChance * ((value === 0 ? 0 : 1) - chance);
  }
  return { rate: size * chance, errors };
}
