import { type Backtest, backtest, runningTotalLoss } from "#lib/forecast/backtest";
import { combined } from "#lib/forecast/combined";
import { simpleAverage } from "#lib/forecast/methods/average-methods";
import { syntetosBoylan } from "#lib/forecast/methods/croston";
import type { Forecaster, ForecastingMethod, Series } from "#lib/forecast/methods/forecasting-method";
import { dampedTrend, holt } from "#lib/forecast/methods/holt";
import { holtWintersAdditive, holtWintersMultiplicative } from "#lib/forecast/methods/holt-winters";
import { meanMethod } from "#lib/forecast/methods/mean-method";
import { naive, seasonalNaive } from "#lib/forecast/methods/naive";
import { simpleSmoothing } from "#lib/forecast/methods/simple-smoothing";
import { teunterSyntetosBabai } from "#lib/forecast/methods/teunter-syntetos-babai";
import { theta } from "#lib/forecast/methods/theta";

/** A method that was tried on a series. */
export type TriedForecast = {
  readonly name: string;
  /** how many numbers its fit takes from the series */
  readonly freedom: number;
  readonly forecaster: Forecaster;
  readonly looked: Backtest;
  /** error of its running totals, raised by what its fit took from the series, in the unit of the series */
  readonly loss: number;
};

/** What was chosen: the mean of the members' forecasts. */
export type ChosenForecast = {
  /** best first; their forecasts are averaged */
  readonly members: readonly TriedForecast[];
  /** best first */
  readonly runnersUp: readonly TriedForecast[];
  readonly forecast: (steps: number) => number[];
  /** of the mean of the members */
  readonly looked: Backtest;
};

/** Simplest first: where two are equally good the simpler one is taken. */
const METHODS: readonly ForecastingMethod[] = [
  naive,
  meanMethod,
  simpleAverage,
  simpleSmoothing,
  seasonalNaive,
  syntetosBoylan,
  teunterSyntetosBabai,
  theta,
  holt,
  dampedTrend,
  holtWintersAdditive,
  holtWintersMultiplicative,
];
const MOST_MEMBERS = 4;
/** A member's loss is at most so many times the best one's. */
const NEAR = 1.3;
/** A season of more values has more states than a small shop's history can tell. */
const LONGEST_FITTED_SEASON = 24;
const MOST_LOOKS = 28;
const FEWEST_SEEN = 4;

/**
 * Forecast of a series by the methods that would have been closest so far: all are fitted, each looks back
 * over at most the last 28 origins (at least half of the series seen), and up to four whose running totals
 * were within 30 % of the best one's are averaged. Averages of a few good methods beat the single best one
 * in all large comparisons. A fit that takes much from the series has its loss raised by
 * sqrt((n + k) / (n - k)), as its looks back have seen what came.
 *
 * @param series of at least one value
 * @param steps to look ahead
 * @returns members, runners-up, the forecast
 * @throws RangeError when there is no value
 * @see Makridakis and Hibon (2000), The M3-Competition, International Journal of Forecasting 16; Akaike
 * (1969), final prediction error, Annals of the Institute of Statistical Mathematics 21 (from memory)
 * @example chosenForecast({ values, seasonLength: 1 }, 3).forecast(3)
 */
export function chosenForecast(series: Series, steps: number): ChosenForecast {
  const { values, seasonLength } = series;
  if (values.length === 0) throw new RangeError("chosenForecast requires a value, got none");
  const fitting = METHODS.filter((method) => isFit(method, series));
  const fitted = fitting.map((method) => ({ method, forecaster: method.fitted(series) }));
  const firstOrigin = Math.max(
    Math.min(FEWEST_SEEN, values.length),
    Math.min(Math.floor(values.length / 2), values.length - steps - 1),
    values.length - MOST_LOOKS,
    ...fitted.map(({ method, forecaster }) => fewestSeen(method, forecaster, seasonLength)),
  );
  const tried = fitted
    .map(({ method, forecaster }): TriedForecast => {
      const looked = backtest(forecaster, values, { firstOrigin, steps });
      const taken = method.freedom(seasonLength);
      const raised = Math.sqrt((values.length + taken) / Math.max(1, values.length - taken));
      const loss = (runningTotalLoss(looked) ?? 0) * raised;
      return { name: method.name, freedom: taken, forecaster, looked, loss };
    })
    .sort((a, b) => a.loss - b.loss);
  const nearest = (tried[0]?.loss ?? 0) * NEAR;
  const members = tried.slice(0, MOST_MEMBERS).filter(({ loss }) => loss <= nearest);
  const together = combined(
    members.map(({ forecaster }) => forecaster),
    "mean",
  );
  return {
    members,
    runnersUp: tried.slice(members.length),
    forecast: together.forecast,
    looked: backtest(together, values, { firstOrigin, steps }),
  };
}

function isFit(method: ForecastingMethod, { values, seasonLength }: Series): boolean {
  const isWinters = method === holtWintersAdditive || method === holtWintersMultiplicative;
  if (method === seasonalNaive && seasonLength < 2) return false;
  if (isWinters && (seasonLength < 2 || seasonLength > LONGEST_FITTED_SEASON)) return false;
  if (isWinters && values.length < 2 * seasonLength + 5) return false;
  if (method === holtWintersMultiplicative && values.some((value) => value <= 0)) return false;
  return values.length >= method.fewestValues(seasonLength) && values.length > method.freedom(seasonLength);
}

function fewestSeen(method: ForecastingMethod, forecaster: Forecaster, seasonLength: number): number {
  return Math.max(method.fewestValues(seasonLength) + 1, forecaster.parameters.window ?? 0);
}
