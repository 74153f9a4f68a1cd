import type { Forecaster, MethodParameters } from "#lib/forecast/methods/forecasting-method";

/** What a method that says one level for all coming steps has to know. */
export type FlatQuestion = {
  readonly values: readonly number[];
  readonly parameters: MethodParameters;
  readonly errors: readonly number[];
  /** level after these values, oldest first */
  readonly levelAfter: (seen: readonly number[]) => number;
  /** null where the method says nothing of it */
  readonly varianceGrowth: Forecaster["varianceGrowth"];
};

/**
 * Forecaster that says the same level for each coming step.
 *
 * @param question values, parameters, errors, and the level after any number of values
 */
export function flatForecaster(question: FlatQuestion): Forecaster {
  const { values, parameters, errors, levelAfter, varianceGrowth } = question;
  const level = levelAfter(values);
  return {
    parameters,
    errors,
    forecast: (steps) => new Array<number>(steps).fill(level),
    forecastAfter: (count, steps) => new Array<number>(steps).fill(levelAfter(values.slice(0, count))),
    varianceGrowth,
  };
}
