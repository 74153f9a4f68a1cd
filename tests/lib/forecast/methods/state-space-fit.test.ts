import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Series } from "#lib/forecast/methods/forecasting-method";
import { smooth } from "#lib/forecast/methods/smoothing";
import { likelihoodResiduals, logLikelihood } from "#lib/forecast/methods/smoothing-likelihood";
import {
  type GivenStateSpace,
  type StateSpaceFit,
  stateSpaceFit,
} from "#lib/forecast/methods/state-space-fit";
import { stateSpaceModels } from "#lib/forecast/methods/state-space-model";
import { stateSpaceSearch } from "#lib/forecast/methods/state-space-search";
import { stateSpaceStart } from "#lib/forecast/methods/state-space-start";

const uses = fc.array(fc.integer({ min: 1, max: 50 }), { minLength: 16, maxLength: 24 });

/** All models of a few series. */
function forEachFit(check: (fit: StateSpaceFit, series: Series) => void): void {
  fc.assert(
    fc.property(uses, (values) => {
      const series = { values, seasonLength: 4 };
      for (const model of stateSpaceModels(series)) check(stateSpaceFit(model, series), series);
    }),
    { numRuns: 5 },
  );
}

function likelihoodOf({ model, constants, start }: GivenStateSpace, values: readonly number[]): number {
  const { errors } = smooth(values, { constants, season: model.season, seasonFrom: "old-level" }, start);
  return logLikelihood(likelihoodResiduals(model.error, errors, values), values);
}

describe("fit of a state space model", () => {
  it("finds the mean of a series that only alternates", () => {
    // The level stays as near to 10 as alpha lets it: errors of 2 each, -6/2 log(6 × 4).
    const values = [12, 8, 12, 8, 12, 8];
    const model = { error: "additive", trend: "none", season: "none" } as const;
    const fit = stateSpaceFit(model, { values, seasonLength: 1 });
    expect(fit.constants.alpha).toBeCloseTo(0.0001, 6);
    expect(fit.start.level).toBeCloseTo(10, 2);
    expect(fit.logLikelihood).toBeCloseTo(-3 * Math.log(24), 2);
    // k = 3 of 6 values: + 6 + 24 / 2
    expect(fit.correctedAkaike).toBeCloseTo(-2 * fit.logLikelihood + 18, 9);
  });

  it("says how likely it is, and no start of its searches is likelier", () => {
    forEachFit((fit, { values, seasonLength }) => {
      expect(likelihoodOf(fit, values)).toBeCloseTo(fit.logLikelihood, 6);
      const { constants, ruleOf } = stateSpaceSearch(fit.model);
      const start = stateSpaceStart(fit.model, { values, seasonLength });
      for (const place of [0, 1, -1]) {
        const rule = ruleOf(constants.map(({ starts }) => starts.at(place) ?? Number.NaN));
        const other = { model: fit.model, constants: rule.constants, start };
        expect(fit.logLikelihood).toBeGreaterThanOrEqual(likelihoodOf(other, values) - 1e-6);
      }
    });
  });

  it("keeps the constants in their region", () => {
    forEachFit(({ model, constants: { alpha, betaStar, phi, gamma } }) => {
      expect(alpha).toBeGreaterThanOrEqual(0.0001);
      expect(alpha).toBeLessThanOrEqual(0.9999);
      expect(alpha * betaStar).toBeLessThan(alpha);
      expect(gamma).toBeLessThan(1 - alpha);
      const [least, most] = model.trend === "damped" ? [0.8, 0.98] : [1, 1];
      expect(phi).toBeGreaterThanOrEqual(least);
      expect(phi).toBeLessThanOrEqual(most);
    });
  });

  it("has seasons about 0, or about 1 where they are factors", () => {
    forEachFit(({ model, start: { seasons } }, { seasonLength }) => {
      const count = model.season === "none" ? 0 : seasonLength;
      expect(seasons).toHaveLength(count);
      const sum = seasons.reduce((total, each) => total + each, 0);
      expect(sum).toBeCloseTo(model.season === "multiplicative" ? count : 0, 6);
    });
  });

  it("refuses a series with too few values for its criterion", () => {
    const model = { error: "additive", trend: "none", season: "none" } as const;
    expect(() => stateSpaceFit(model, { values: [3, 4, 5, 6], seasonLength: 1 })).toThrow(
      new RangeError("correctedAkaike requires 5 values, got 4"),
    );
  });
});
