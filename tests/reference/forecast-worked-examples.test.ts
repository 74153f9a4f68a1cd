import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { croston } from "#lib/forecast/methods/croston";
import { holtWintersMultiplicativeRecipe } from "#lib/forecast/methods/holt-winters";
import { simpleSmoothing } from "#lib/forecast/methods/simple-smoothing";
import {
  type SmoothingRule,
  smooth,
  smoothingForecast,
  smoothingVarianceGrowth,
} from "#lib/forecast/methods/smoothing";
import { straightLine } from "#lib/forecast/methods/straight-line";

/** One published example; which fields it has depends on the example. */
type Example = {
  readonly id: string;
  readonly data: { readonly values: readonly number[] };
  readonly published: Readonly<Record<string, unknown>>;
  readonly recomputed: Readonly<Record<string, unknown>>;
  readonly storedCopyCheck: { readonly oneStepForecasts: readonly (number | null)[]; readonly mse: number };
};

const file = new URL("./data/forecast-worked-examples.json", import.meta.url);
const examples: readonly Example[] = JSON.parse(readFileSync(file, "utf8")).examples;

function example(id: string): Example {
  const found = examples.find((each) => each.id === id);
  if (found === undefined) throw new RangeError(`no example ${id}`);
  return found;
}

function list(from: Readonly<Record<string, unknown>>, key: string): number[] {
  const found = from[key];
  if (!Array.isArray(found)) throw new RangeError(`no list ${key}`);
  return found.filter((value) => value !== null);
}

function one(from: Readonly<Record<string, unknown>>, key: string): number {
  const found = from[key];
  if (typeof found !== "number") throw new RangeError(`no number ${key}`);
  return found;
}

/** Each value agrees to half a unit of the last decimal that was printed, or lies between two that do. */
function expectPrinted(
  found: readonly number[],
  printed: readonly number[],
  decimals: number,
  other: readonly number[] = found,
): void {
  expect(found.length).toBe(printed.length);
  const half = 0.5 * 10 ** -decimals + 1e-9;
  for (const [index, value] of printed.entries()) {
    const ends = [found[index] ?? Number.NaN, other[index] ?? Number.NaN];
    expect(Math.min(...ends) - half, `entry ${index + 1}`).toBeLessThanOrEqual(value);
    expect(Math.max(...ends) + half, `entry ${index + 1}`).toBeGreaterThanOrEqual(value);
  }
}

function sumOfSquares(errors: readonly number[]): number {
  return errors.reduce((sum, error) => sum + error * error, 0);
}

/** What simple smoothing said of each value but the first. */
function saidBefore(values: readonly number[], alpha: number): number[] {
  const forecaster = simpleSmoothing.fixed({ values, seasonLength: 1 }, { alpha });
  return values.slice(1).flatMap((_, index) => forecaster.forecastAfter(index + 1, 1));
}

function lineRule(alpha: number, betaStar: number): SmoothingRule {
  return { constants: { alpha, betaStar, phi: 1, gamma: 0 }, season: "none", seasonFrom: "old-level" };
}

// https://www.itl.nist.gov/div898/handbook/pmc/section4/pmc431.htm and pmc432.htm
describe("NIST/SEMATECH e-Handbook 6.4.3.1 and 6.4.3.2, single exponential smoothing", () => {
  const { data, published, recomputed } = example("nist-handbook-6.4.3.1");
  const { values } = data;

  it("smooths the twelve values as printed, alpha 0.1", () => {
    const smoothed = saidBefore(values, 0.1);
    expectPrinted(smoothed, list(recomputed, "S"), 9);
    expectPrinted(smoothed, list(published, "S"), 2);
  });

  it("has the squared errors that unrounded arithmetic gives", () => {
    const squared = (alpha: number) =>
      sumOfSquares(simpleSmoothing.fixed({ values, seasonLength: 1 }, { alpha }).errors);
    expect(squared(0.1)).toBeCloseTo(one(recomputed, "sse"), 6);
    expect(squared(0.1) / 11).toBeCloseTo(one(recomputed, "mse"), 6);
    expect(squared(0.5) / 11).toBeCloseTo(one(recomputed, "mseAlpha05"), 6);
  });

  it("forecasts 71.5 for every coming period; the page's variant is what it says when 70 keeps coming", () => {
    const { published: next, recomputed: ahead } = example("nist-handbook-6.4.3.2");
    expect(values.at(-1)).toBe(one(next, "lastValue"));
    expectPrinted([saidBefore(values, 0.1).at(-1) ?? Number.NaN], [one(next, "itsForecast")], 1);
    const flat = one(ahead, "flatForecastForPeriod13");
    expectPrinted(
      simpleSmoothing.fixed({ values, seasonLength: 1 }, { alpha: 0.1 }).forecast(4),
      [flat, flat, flat, flat],
      9,
    );
    const bootstrapped = list(ahead, "bootstrapped");
    const repeated = [...values, ...bootstrapped.map(() => 70)];
    expectPrinted(saidBefore(repeated, 0.1).slice(values.length - 1), bootstrapped, 6);
  });
});

// https://www.itl.nist.gov/div898/handbook/pmc/section4/pmc433.htm and pmc434.htm
describe("NIST/SEMATECH e-Handbook 6.4.3.3 and 6.4.3.4, double exponential smoothing", () => {
  const { data, published, recomputed } = example("nist-handbook-6.4.3.4");
  const { values } = data;
  const rule = lineRule(0.3623, 1);
  // b1 = ((y2 - y1) + (y3 - y2) + (y4 - y3)) / 3 = (8.8 - 6.4) / 3 = 0.8
  const start = { level: 6.4, trend: 0.8, seasons: [] };
  const smoothedUpTo = (count: number) => smooth(values.slice(1, count), rule, start);

  it("smooths the ten values as printed", () => {
    const levels = values.map((_, index) => smoothedUpTo(index + 1).state.level);
    expectPrinted(levels, list(published, "doubleSmoothed"), 1);
  });

  it("forecasts each value and the five that come as printed", () => {
    const { errors, state } = smoothedUpTo(values.length);
    const said = errors.map((error, index) => (values[index + 1] ?? Number.NaN) - error);
    expectPrinted(said, list(published, "doubleForecast"), 1);
    expectPrinted(said, list(recomputed, "doubleForecast"), 6);
    expectPrinted(smoothingForecast(state, rule, 5), list(published, "forecastDouble"), 1);
    expectPrinted(smoothingForecast(state, rule, 5), list(recomputed, "forecastDouble"), 6);
    // The page has 3.7024, from rounded numbers.
    expect(sumOfSquares(errors) / errors.length).toBeCloseTo(one(recomputed, "mseDouble"), 6);
  });

  it("compares with single smoothing, alpha 0.977, as printed", () => {
    const single = simpleSmoothing.fixed({ values, seasonLength: 1 }, { alpha: 0.977 });
    // The page rounds its constant to 0.977 and its third entry, 7.75, up: both ends of the rounding are tried.
    expectPrinted(saidBefore(values, 0.9765), list(published, "single"), 1, saidBefore(values, 0.9775));
    expectPrinted(single.forecast(5), list(published, "forecastSingle"), 1);
    expect(single.forecast(1)[0]).toBeCloseTo(one(recomputed, "forecastSingle"), 5);
    expect(sumOfSquares(single.errors) / 9).toBeCloseTo(one(recomputed, "mseSingle"), 6);
  });
});

// https://www.itl.nist.gov/div898/handbook/pmc/section4/pmc435.htm and pmc436.htm. Its squared errors of double
// and triple smoothing rest on starts that the page does not state.
describe("NIST/SEMATECH e-Handbook 6.4.3.5 and 6.4.3.6, quarterly sales", () => {
  const { data, recomputed, storedCopyCheck } = example("nist-handbook-6.4.3.6");
  const { values } = data;
  const seasonLength = 4;

  it("starts with the trend (1/L) sum (y[L+i] - y[i]) / L = 9.75", () => {
    const { level, trend } = holtWintersMultiplicativeRecipe.start({ values, seasonLength });
    expect(trend).toBeCloseTo(one(recomputed, "initialTrend"), 10);
    expect(level).toBe(list(recomputed, "yearMeans")[0]);
  });

  it("has the initial indices as the mean over the years of each year's own start", () => {
    const years = [0, 1, 2, 3, 4, 5].map((year) =>
      holtWintersMultiplicativeRecipe.start({ values: values.slice(year * seasonLength), seasonLength }),
    );
    expect(years.map(({ level }) => level)).toEqual(list(recomputed, "yearMeans"));
    const indices = [0, 1, 2, 3].map(
      (place) => years.reduce((sum, { seasons }) => sum + (seasons[place] ?? Number.NaN), 0) / years.length,
    );
    expectPrinted(indices, list(recomputed, "initialSeasonalIndices"), 7);
  });

  it("has the mean squared errors and forecasts of single smoothing", () => {
    const squared = (alpha: number) =>
      sumOfSquares(simpleSmoothing.fixed({ values, seasonLength: 1 }, { alpha }).errors) / 23;
    expect(squared(0.4694)).toBeCloseTo(one(recomputed, "singleMseAlpha04694"), 3);
    expect(squared(0.45)).toBeCloseTo(one(recomputed, "singleMseAlpha045"), 3);
    expect(squared(0.45)).toBeCloseTo(storedCopyCheck.mse, 1);
    const printed = storedCopyCheck.oneStepForecasts.filter((value) => value !== null);
    expectPrinted(saidBefore(values, 0.45), printed, 0);
    const next = simpleSmoothing.fixed({ values, seasonLength: 1 }, { alpha: 0.45 }).forecast(1);
    expectPrinted(next, [714], 0);
  });
});

// Hyndman and Athanasopoulos, Forecasting: Principles and Practice, 2nd edition, section 12.2:
// https://otexts.com/fpp2/counts.html
describe("a textbook's example of Croston's method, monthly sales of a lubricant", () => {
  const { data, published, recomputed } = example("fpp2-counts");

  it("forecasts 0.985 a month, alpha 0.1: size 2.750 over interval 2.793", () => {
    const forecaster = croston.fixed({ values: data.values, seasonLength: 1 }, { alpha: 0.1 });
    const [next = Number.NaN, after] = forecaster.forecast(2);
    expect(next).toBeCloseTo(one(recomputed, "forecast"), 9);
    expect(after).toBe(next);
    expectPrinted([next], [one(published, "forecast")], 3);
    expectPrinted([next], [one(recomputed, "size") / one(recomputed, "interval")], 8);
  });
});

// https://support.nag.com/numeric/cl/nagdoc_cl26.2/examples/baseresults/g13amce.r.html
describe("a numerical library's example of Holt's linear trend, g13amc", () => {
  const { data, published, recomputed } = example("nag-g13amc");
  const { values } = data;
  const rule = lineRule(0.01, 1);
  const { errors, state } = smooth(values, rule, { level: 168.018, trend: 3.8, seasons: [] });
  const squared = sumOfSquares(errors) / errors.length;

  it("starts from the straight line through the eleven values", () => {
    const { level, slope } = straightLine(values);
    expectPrinted([level, slope], [168.018, 3.8], 3);
  });

  it("forecasts each value and the five that come as printed", () => {
    const said = errors.map((error, index) => (values[index] ?? Number.NaN) - error);
    expectPrinted(said, list(published, "oneStep"), 3);
    expectPrinted(smoothingForecast(state, rule, 5), list(published, "forecast"), 3);
    expectPrinted(smoothingForecast(state, rule, 5), list(recomputed, "forecast"), 4);
    expectPrinted([Math.sqrt(squared)], [one(published, "rmse")], 3);
    const absolute = errors.reduce((sum, error) => sum + Math.abs(error), 0) / errors.length;
    expectPrinted([absolute], [one(published, "mae")], 3);
  });

  it("has the printed standard errors of the forecasts", () => {
    const growth = smoothingVarianceGrowth(rule, 1, 5);
    expectPrinted(
      growth.map((times) => Math.sqrt(squared * times)),
      list(published, "standardErrors"),
      3,
    );
  });
});
