/** Use a week (or a day, a month), oldest first, and after how many values a season comes round; 1: never. */
export type Series = { readonly values: readonly number[]; readonly seasonLength: number };

/** Numbers that a method is set by, each by its name. */
export type MethodParameters = Readonly<Record<string, number>>;

/** A method with its parameters, having seen a series. */
export type Forecaster = {
  readonly parameters: MethodParameters;
  /** value less what the method said one step before, oldest first; the last is of the newest value */
  readonly errors: readonly number[];
  /** expected values of the coming steps, in the unit of the series, not held above 0 */
  readonly forecast: (steps: number) => number[];
  /**
   * What it would have said after only the first `count` values, its parameters kept: for looking back.
   */
  readonly forecastAfter: (count: number, steps: number) => number[];
  /**
   * Variance of the forecast's error at each coming step, as a multiple of the one-step error's; null where
   * the method says nothing of it
   */
  readonly varianceGrowth: ((steps: number) => number[]) | null;
};

/** One way to forecast; all have this form. */
export type ForecastingMethod = {
  readonly name: string;
  /** how many numbers a fit takes from the series: constants and states */
  readonly freedom: (seasonLength: number) => number;
  /** fewest values that it needs */
  readonly fewestValues: (seasonLength: number) => number;
  /**
   * The method with parameters of the caller's choice.
   * @throws RangeError when a parameter is missing or the series is too short
   */
  readonly fixed: (series: Series, parameters: MethodParameters) => Forecaster;
  /** The method with the parameters that fit the series best. */
  readonly fitted: (series: Series) => Forecaster;
};

/**
 * A parameter by its name.
 *
 * @param parameters the parameters given
 * @param name which one
 * @param method for the message
 * @throws RangeError when it is missing or no finite number
 */
export function parameter(parameters: MethodParameters, name: string, method: string): number {
  const value = parameters[name];
  if (value === undefined || !Number.isFinite(value)) {
    throw new RangeError(`${method} requires a number for ${name}, got ${value}`);
  }
  return value;
}

/**
 * Checks that a series is long enough for a method.
 *
 * @throws RangeError when it is not
 */
export function requireValues(
  method: Pick<ForecastingMethod, "name" | "fewestValues">,
  series: Series,
): void {
  const fewest = method.fewestValues(series.seasonLength);
  if (series.values.length < fewest) {
    throw new RangeError(`${method.name} requires ${fewest} values, got ${series.values.length}`);
  }
}
