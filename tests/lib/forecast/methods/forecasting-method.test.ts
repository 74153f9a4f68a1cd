import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { simpleAverage, weightedAverage } from "#lib/forecast/methods/average-methods";
import {
  classicHoltWintersAdditive,
  classicHoltWintersMultiplicative,
} from "#lib/forecast/methods/classic-holt-winters";
import { croston, syntetosBoylan } from "#lib/forecast/methods/croston";
import {
  type Forecaster,
  type ForecastingMethod,
  type MethodParameters,
  parameter,
  requireValues,
} from "#lib/forecast/methods/forecasting-method";
import { dampedTrend, holt } from "#lib/forecast/methods/holt";
import { holtWintersAdditive, holtWintersMultiplicative } from "#lib/forecast/methods/holt-winters";
import { likelihoodSmoothing } from "#lib/forecast/methods/likelihood-smoothing";
import { meanMethod } from "#lib/forecast/methods/mean-method";
import { naive, seasonalNaive } from "#lib/forecast/methods/naive";
import { simpleSmoothing } from "#lib/forecast/methods/simple-smoothing";
import { teunterSyntetosBabai } from "#lib/forecast/methods/teunter-syntetos-babai";
import { theta } from "#lib/forecast/methods/theta";

type Sibling = {
  readonly method: ForecastingMethod;
  readonly given: MethodParameters;
  /** a constant added to all values is added to all forecasts */
  readonly shifts: boolean;
  readonly onlyAboveZero: boolean;
};

const SEASON = { alpha: 0.3, betaStar: 0.2, gamma: 0.4 };
const CHANCE = { alphaSize: 0.2, alphaChance: 0.1 };
const plain = { shifts: true, onlyAboveZero: false };
const uneven = { shifts: false, onlyAboveZero: false };
const product = { shifts: false, onlyAboveZero: true };
const SIBLINGS: readonly Sibling[] = [
  { method: naive, given: {}, ...plain },
  { method: seasonalNaive, given: {}, ...plain },
  { method: meanMethod, given: {}, ...plain },
  { method: simpleAverage, given: { window: 3 }, ...plain },
  { method: weightedAverage, given: { window: 3 }, ...plain },
  { method: simpleSmoothing, given: { alpha: 0.3 }, ...plain },
  { method: holt, given: { alpha: 0.5, betaStar: 0.1 }, ...plain },
  { method: dampedTrend, given: { alpha: 0.5, betaStar: 0.1, phi: 0.9 }, ...plain },
  { method: theta, given: { alpha: 0.3 }, ...plain },
  { method: holtWintersAdditive, given: SEASON, ...plain },
  { method: classicHoltWintersAdditive, given: SEASON, ...plain },
  { method: likelihoodSmoothing, given: { alpha: 0.3 }, ...plain },
  { method: croston, given: { alpha: 0.1 }, ...uneven },
  { method: syntetosBoylan, given: { alpha: 0.1 }, ...uneven },
  { method: teunterSyntetosBabai, given: CHANCE, ...uneven },
  { method: holtWintersMultiplicative, given: SEASON, ...product },
  { method: classicHoltWintersMultiplicative, given: SEASON, ...product },
];
const NAMED = SIBLINGS.map((sibling) => [sibling.method.name, sibling] as const);
const SEASON_LENGTH = 4;
const STEPS = 6;

/** Uses of 0 to 40 a week, or from 1 where a method needs that; a quarter or more of them zeros otherwise. */
const uses = ({ onlyAboveZero }: Sibling, fewest = 2 * SEASON_LENGTH) =>
  fc.array(
    onlyAboveZero
      ? fc.integer({ min: 1, max: 40 })
      : fc.oneof(fc.constant(0), fc.integer({ min: 0, max: 40 })),
    { minLength: fewest, maxLength: 18 },
  );

const series = (values: readonly number[]) => ({ values, seasonLength: SEASON_LENGTH });

function expectNear(found: readonly number[], wanted: readonly number[], digits = 1e-9): void {
  expect(found.length).toBe(wanted.length);
  const size = Math.max(1, ...wanted.map(Math.abs));
  for (const [index, value] of wanted.entries()) {
    expect(Math.abs((found[index] ?? Number.NaN) - value)).toBeLessThanOrEqual(digits * size);
  }
}

const bothWays = ({ method, given }: Sibling, values: readonly number[]): readonly Forecaster[] => [
  method.fixed(series(values), given),
  method.fitted(series(values)),
];

describe.each(NAMED)("%s, as every method", (_, sibling) => {
  const { method, given } = sibling;

  it("says after all values what it forecasts", () => {
    fc.assert(
      fc.property(uses(sibling), (values) => {
        for (const each of bothWays(sibling, values)) {
          expect(each.forecastAfter(values.length, STEPS)).toEqual(each.forecast(STEPS));
          expect(each.forecast(0)).toEqual([]);
        }
      }),
      { numRuns: 15 },
    );
  });

  it("has as errors what it said one step before", () => {
    fc.assert(
      fc.property(uses(sibling), (values) => {
        for (const { errors, forecastAfter } of bothWays(sibling, values)) {
          const first = values.length - errors.length;
          const said = values.slice(first).map((value, index) => {
            const [next = Number.NaN] = forecastAfter(first + index, 1);
            return value - next;
          });
          expectNear(errors, said);
        }
      }),
      { numRuns: 15 },
    );
  });

  it("forecasts four times as much where all uses are four times as much", () => {
    fc.assert(
      fc.property(uses(sibling), (values) => {
        const scaled = bothWays(
          sibling,
          values.map((value) => 4 * value),
        );
        for (const [index, each] of bothWays(sibling, values).entries()) {
          const wanted = each.forecast(STEPS).map((value) => 4 * value);
          expectNear(scaled[index]?.forecast(STEPS) ?? [], wanted, 1e-6);
        }
      }),
      // Nothing but zeros after the weeks that a classic start is made from.
      { numRuns: 15, examples: sibling.onlyAboveZero ? [] : [[[0, 37, 3, 0, 0, 0, 0, 0]]] },
    );
  });

  it("forecasts a constant series as itself", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 500 }), fc.integer({ min: 8, max: 14 }), (level, count) => {
        for (const each of bothWays(sibling, new Array<number>(count).fill(level))) {
          const wanted = new Array<number>(STEPS).fill(level);
          // Syntetos and Boylan's factor is for uneven use, and takes its share off even use as well.
          const factor = method === syntetosBoylan ? 1 - (each.parameters.alpha ?? Number.NaN) / 2 : 1;
          expectNear(
            each.forecast(STEPS),
            wanted.map((value) => factor * value),
            1e-7,
          );
        }
      }),
      { numRuns: 8 },
    );
  });

  it("gives finite numbers for short series, zeros and a single spike, or says why it cannot", () => {
    const spike = [0, 0, 0, 0, 0, 9, 0, 0, 0, 0];
    const odd = [[5], [5, 0], [0, 5, 1], [0], [0, 0, 0], new Array<number>(9).fill(0), spike];
    for (const values of odd) {
      const fewest = method.fewestValues(SEASON_LENGTH);
      if (values.length < fewest) {
        expect(() => method.fitted(series(values))).toThrow(
          `${method.name} requires ${fewest} values, got ${values.length}`,
        );
        continue;
      }
      if (sibling.onlyAboveZero) {
        expect(() => method.fitted(series(values))).toThrow(
          new RangeError(`${method.name} requires values above 0, got 0`),
        );
        continue;
      }
      const { errors, forecast, varianceGrowth } = method.fitted(series(values));
      for (const number of [...errors, ...forecast(STEPS), ...(varianceGrowth?.(STEPS) ?? [])]) {
        expect(Number.isFinite(number), `${values}`).toBe(true);
      }
    }
  });

  it("has a variance that starts at the one-step error's and never falls, where it has one", () => {
    fc.assert(
      fc.property(uses(sibling), (values) => {
        const growth = method.fixed(series(values), given).varianceGrowth?.(STEPS);
        if (growth === undefined) {
          expect(method.fixed(series(values), given).varianceGrowth).toBeNull();
          return;
        }
        expect(growth[0]).toBe(1);
        for (const [index, value] of growth.slice(1).entries())
          expect(value).toBeGreaterThanOrEqual(growth[index] ?? 0);
      }),
      { numRuns: 10 },
    );
  });

  it("refuses no values, and a parameter that is missing or no number", () => {
    expect(() => method.fixed(series([]), given)).toThrow(RangeError);
    expect(() => method.fitted(series([]))).toThrow(RangeError);
    const enough = [3, 4, 5, 6, 3, 4, 5, 6, 3];
    for (const name of Object.keys(given)) {
      const { [name]: left, ...others } = given;
      expect(left).toBeDefined();
      for (const bad of [others, { ...others, [name]: Number.NaN }]) {
        expect(() => method.fixed(series(enough), bad)).toThrow(
          `${method.name} requires a number for ${name}`,
        );
      }
    }
  });
});

describe.each(NAMED.filter(([, { shifts }]) => shifts))("%s, as every additive method", (_, sibling) => {
  it("forecasts 100 more where every value is 100 more", () => {
    fc.assert(
      fc.property(uses(sibling), (values) => {
        const shifted = values.map((value) => value + 100);
        const wanted = sibling.method.fixed(series(values), sibling.given).forecast(STEPS);
        expectNear(
          sibling.method.fixed(series(shifted), sibling.given).forecast(STEPS),
          wanted.map((value) => value + 100),
        );
      }),
      { numRuns: 15 },
    );
  });
});

describe("a method's parameter", () => {
  it("is found by its name", () => {
    expect(parameter({ alpha: 0.25 }, "alpha", "smoothing")).toBe(0.25);
    expect(() => parameter({}, "alpha", "smoothing")).toThrow(
      new RangeError("smoothing requires a number for alpha, got undefined"),
    );
  });
});

describe("a method's fewest values", () => {
  it("are asked for", () => {
    const three = { name: "three", fewestValues: () => 3 };
    expect(() => requireValues(three, series([1, 2]))).toThrow(
      new RangeError("three requires 3 values, got 2"),
    );
    expect(() => requireValues(three, series([1, 2, 3]))).not.toThrow();
  });
});
