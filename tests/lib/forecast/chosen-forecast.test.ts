import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { runningTotalLoss } from "#lib/forecast/backtest";
import { chosenForecast } from "#lib/forecast/chosen-forecast";

const STEPS = 3;
const uses = (fewest: number) =>
  fc.array(fc.oneof(fc.constant(0), fc.integer({ min: 0, max: 40 })), { minLength: fewest, maxLength: 24 });
const series = (values: readonly number[], seasonLength = 1) => ({ values, seasonLength });
const names = (members: readonly { readonly name: string }[]) => members.map(({ name }) => name);

describe("chosen forecast", () => {
  it("is the mean of at most four members, none of them over 1.3 times as far off as the best", () => {
    fc.assert(
      fc.property(uses(1), (values) => {
        const { members, runnersUp, forecast, looked } = chosenForecast(series(values, 4), STEPS);
        expect(members.length).toBeGreaterThanOrEqual(1);
        expect(members.length).toBeLessThanOrEqual(4);
        const losses = [...members, ...runnersUp].map(({ loss }) => loss);
        expect(losses).toEqual(losses.toSorted((a, b) => a - b));
        for (const { loss } of members) expect(loss).toBeLessThanOrEqual(1.3 * (losses[0] ?? Number.NaN));
        const means = members[0]?.forecaster.forecast(STEPS).map((_, step) => {
          const said = members.map(({ forecaster }) => forecaster.forecast(STEPS)[step] ?? Number.NaN);
          return said.reduce((sum, value) => sum + value, 0) / members.length;
        });
        for (const [step, value] of forecast(STEPS).entries())
          expect(value).toBeCloseTo(means?.[step] ?? 0, 9);
        expect(looked.firstOrigin + looked.errors.length).toBe(Math.max(values.length, looked.firstOrigin));
      }),
      { numRuns: 25 },
    );
  });

  it("chooses the same and forecasts four times as much where all uses are four times as much", () => {
    fc.assert(
      fc.property(uses(2), (values) => {
        const chosen = chosenForecast(series(values), STEPS);
        const scaled = chosenForecast(series(values.map((value) => 4 * value)), STEPS);
        expect(names(scaled.members)).toEqual(names(chosen.members));
        for (const [step, value] of chosen.forecast(STEPS).entries())
          expect(scaled.forecast(STEPS)[step]).toBeCloseTo(4 * value, 6);
      }),
      { numRuns: 25 },
    );
  });

  it("gives finite numbers for short series, zeros and a single spike", () => {
    const spike = [0, 0, 0, 0, 0, 9, 0, 0, 0, 0];
    const odd = [[5], [5, 0], [0, 5, 1], [0], [0, 0, 0], new Array<number>(9).fill(0), spike];
    for (const values of odd) {
      const { members, forecast, looked } = chosenForecast(series(values, 4), STEPS);
      const losses = members.map(({ loss }) => loss);
      for (const number of [...forecast(STEPS), ...losses, ...looked.errors.flat()]) {
        expect(Number.isFinite(number), `${values}`).toBe(true);
      }
    }
  });

  it("forecasts a constant series as itself, by the simplest method first", () => {
    const { members, forecast } = chosenForecast(series(new Array<number>(20).fill(7)), STEPS);
    expect(members[0]?.name).toBe("newest week");
    for (const value of forecast(STEPS)) expect(value).toBeCloseTo(7, 6);
  });

  it("follows a season and a line, which averages cannot", () => {
    const values = Array.from({ length: 40 }, (_, week) => (20 + week) * ([0.5, 1, 1.5, 1][week % 4] ?? 0));
    // (20 + 40) x 0.5, (20 + 41) x 1, (20 + 42) x 1.5
    for (const [step, wanted] of [30, 61, 93].entries()) {
      const [found = Number.NaN] = [chosenForecast(series(values, 4), STEPS).forecast(STEPS)[step]];
      expect(Math.abs(found - wanted) / wanted).toBeLessThan(0.02);
    }
  });

  it("looks back over at most 28 weeks, with at least half of the series seen", () => {
    const wavy = (count: number) => Array.from({ length: count }, (_, week) => 10 + ((week * 7) % 5));
    expect(chosenForecast(series(wavy(80)), STEPS).looked.firstOrigin).toBe(52);
    expect(chosenForecast(series(wavy(40)), STEPS).looked.firstOrigin).toBe(20);
  });

  it("raises the loss by what a fit takes from the series", () => {
    const values = [3, 8, 4, 9, 2, 7, 5, 8, 3, 9, 4, 6];
    const { members, runnersUp } = chosenForecast(series(values), STEPS);
    const naive = [...members, ...runnersUp].find(({ name }) => name === "newest week");
    const mean = [...members, ...runnersUp].find(({ name }) => name === "mean of all weeks");
    // Nothing taken: the loss as it is; one number of 12: sqrt(13 / 11) times.
    expect(naive?.loss).toBeCloseTo(
      runningTotalLoss(naive?.looked ?? { firstOrigin: 0, errors: [] }) ?? -1,
      12,
    );
    const plain = runningTotalLoss(mean?.looked ?? { firstOrigin: 0, errors: [] }) ?? -1;
    expect(mean?.loss).toBeCloseTo(plain * Math.sqrt(13 / 11), 12);
  });

  it("refuses a series without a value", () => {
    expect(() => chosenForecast(series([]), STEPS)).toThrow(
      new RangeError("chosenForecast requires a value, got none"),
    );
  });
});
