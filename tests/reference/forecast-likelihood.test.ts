import { readFileSync } from "node:fs";
import { isDeepStrictEqual } from "node:util";
import { describe, expect, it } from "vitest";
import type { Series } from "#lib/forecast/methods/forecasting-method";
import { likelihoodSmoothing } from "#lib/forecast/methods/likelihood-smoothing";
import {
  correctedAkaike,
  likelihoodResiduals,
  logLikelihood,
} from "#lib/forecast/methods/smoothing-likelihood";
import { stateSpaceFits } from "#lib/forecast/methods/state-space-fits";
import { type StateSpaceModel, stateSpaceFreedom } from "#lib/forecast/methods/state-space-model";

/**
 * State space models of 26 open series, fitted by likelihood and chosen by the corrected Akaike criterion with
 * `ets` of the R package `forecast` 8.20 (https://pkg.robjhyndman.com/forecast/), 10 significant digits; sources
 * of the series in data/README-forecast.md.
 */
type Candidate = { readonly model: string; readonly aicc: number; readonly loglik: number };
type Chosen = Candidate & {
  readonly params: Readonly<Record<string, number>>;
  readonly initial: Readonly<Record<string, number>>;
  readonly point: readonly number[];
};
type Reference = { readonly chosen: Chosen; readonly candidates: readonly Candidate[] };

const data = (name: string) =>
  JSON.parse(readFileSync(new URL(`./data/${name}.json`, import.meta.url), "utf8")).series;
const reference: Record<string, Reference> = data("forecast-likelihood");
const published: Record<string, { frequency: number; values: number[] }> = data("forecast-methods");
const all = Object.entries(reference).map(([name, each]) => {
  const { values = [], frequency = 1 } = published[name] ?? {};
  return { name, ...each, series: { values, seasonLength: frequency } satisfies Series };
});

/** 10 digits are printed, so 1e-8 relative. */
const DIGITS = 1e-8;
/** Models whose criteria differ by less are as good as each other: Burnham and Anderson (2002), from memory. */
const AS_GOOD = 2;

const ERRORS: Readonly<Record<string, StateSpaceModel["error"]>> = { A: "additive", M: "multiplicative" };
const TRENDS: Readonly<Record<string, StateSpaceModel["trend"]>> = { N: "none", A: "additive", Ad: "damped" };
const SEASONS: Readonly<Record<string, StateSpaceModel["season"]>> = { N: "none", ...ERRORS };

/** "ETS(M,Ad,A)": error, trend, season. */
function modelOf(name: string): StateSpaceModel {
  const [errorCode = "", trendCode = "", seasonCode = ""] = name.slice(4, -1).split(",");
  const [error, trend, season] = [ERRORS[errorCode], TRENDS[trendCode], SEASONS[seasonCode]];
  if (error === undefined || trend === undefined || season === undefined) {
    throw new RangeError(`no model is called ${name}`);
  }
  return { error, trend, season };
}

/** The package's constants and start under the names used here; it leaves the oldest season out. */
function parametersOf({ model, params, initial }: Chosen, seasonLength: number) {
  const { error, season } = modelOf(model);
  const newest = Object.keys(initial).filter((name) => name.startsWith("s"));
  const others = newest.map((name) => initial[name] ?? Number.NaN).reverse();
  const sum = season === "multiplicative" ? seasonLength : 0;
  const seasons = season === "none" ? [] : [sum - others.reduce((total, each) => total + each, 0), ...others];
  const { beta, ...constants } = params;
  return {
    ...constants,
    level: initial.l ?? Number.NaN,
    ...(beta !== undefined && { trend: initial.b ?? Number.NaN }),
    ...Object.fromEntries(seasons.map((each, index) => [`season${index + 1}`, each])),
    ...(error === "multiplicative" && { multiplicativeError: 1 }),
    ...(season === "multiplicative" && { multiplicativeSeason: 1 }),
  };
}

describe("likelihood smoothing with the package's parameters", () => {
  it("has its likelihood and criterion in all series, and its forecasts in all but two", () => {
    expect(all.length).toBe(26);
    let compared = 0;
    for (const { name, chosen, series } of all) {
      const { values, seasonLength } = series;
      const model = modelOf(chosen.model);
      const forecaster = likelihoodSmoothing.fixed(series, parametersOf(chosen, seasonLength));
      const likelihood = logLikelihood(likelihoodResiduals(model.error, forecaster.errors, values), values);
      expect(Math.abs(likelihood / chosen.loglik - 1), name).toBeLessThan(DIGITS);
      const criterion = correctedAkaike(likelihood, stateSpaceFreedom(model, seasonLength), values.length);
      expect(Math.abs(criterion / chosen.aicc - 1), name).toBeLessThan(DIGITS);
      // With a season factor the package forecasts the expected value: the plain formula's for one season only,
      // and with a damped trend, whose first step it does not damp, for none.
      const hasFactor = model.season === "multiplicative";
      if (hasFactor && model.trend === "damped") continue;
      compared += 1;
      const wanted = hasFactor ? chosen.point.slice(0, seasonLength) : chosen.point;
      const size = Math.max(...wanted.map(Math.abs));
      for (const [step, value] of forecaster.forecast(wanted.length).entries()) {
        expect(Math.abs(value - (wanted[step] ?? Number.NaN)) / size, name).toBeLessThan(DIGITS);
      }
    }
    expect(compared).toBe(24);
  });
});

describe("likelihood smoothing fitted", () => {
  it.each(all.map((each) => [each.name, each] as const))(
    "%s: each model, and the one chosen, at most 2 above the criterion that the package found",
    (_, { chosen, candidates, series }) => {
      const fits = stateSpaceFits(series);
      expect(fits[0].correctedAkaike - chosen.aicc).toBeLessThanOrEqual(AS_GOOD);
      for (const { model, aicc } of candidates) {
        const found = fits.find((fit) => isDeepStrictEqual(fit.model, modelOf(model)));
        expect((found?.correctedAkaike ?? Number.NaN) - aicc, model).toBeLessThanOrEqual(AS_GOOD);
      }
    },
  );
});
