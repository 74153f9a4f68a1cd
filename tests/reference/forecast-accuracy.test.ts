import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { chosenForecast } from "#lib/forecast/chosen-forecast";

/**
 * Mean absolute errors of `ets` and `thetaf` of the R package `forecast` 8.20
 * (https://pkg.robjhyndman.com/forecast/) on 26 open series, refitted at every origin, 1 to 4 steps ahead, and
 * the scale: the mean absolute change in a season's time (or a step's), as in Hyndman and Koehler (2006),
 * https://doi.org/10.1016/j.ijforecast.2006.03.001. Sources of the series in data/README-forecast.md.
 */
type RollingOrigin = {
  readonly firstOrigin: number;
  readonly lastOrigin: number;
  readonly scale: number;
  readonly maeByHorizon: Readonly<Record<"ets" | "theta", readonly number[]>>;
};
type ReferenceSeries = {
  readonly frequency: number;
  readonly values: readonly number[];
  readonly rollingOrigin: RollingOrigin;
};

const file = new URL("./data/forecast-methods.json", import.meta.url);
const reference: Record<string, ReferenceSeries> = JSON.parse(readFileSync(file, "utf8")).series;
const STEPS = 4;
const FITTING_MS = 240_000;

describe("the chosen forecast against automatic methods of the R package, refitted at every origin", () => {
  it(
    "has a smaller scaled error on average over 26 series, and on no series is far behind both",
    () => {
      const scored = Object.entries(reference).map(([name, series]) => {
        const { maeByHorizon, scale } = series.rollingOrigin;
        return {
          name,
          own: mean(chosenErrors(series)) / scale,
          ets: mean(maeByHorizon.ets) / scale,
          theta: mean(maeByHorizon.theta) / scale,
        };
      });
      expect(scored.length).toBe(26);
      for (const { name, own, ets, theta } of scored) {
        expect(own, name).toBeLessThanOrEqual(1.25 * Math.max(ets, theta));
      }
      const etsMean = mean(scored.map(({ ets }) => ets));
      const thetaMean = mean(scored.map(({ theta }) => theta));
      const ownMean = mean(scored.map(({ own }) => own));
      expect(ownMean).toBeLessThan(Math.min(etsMean, thetaMean, 0.8718));
    },
    FITTING_MS,
  );
});

/** Mean absolute error of the chosen forecast 1, 2, ... steps ahead. */
function chosenErrors({ values, frequency, rollingOrigin }: ReferenceSeries): number[] {
  const errors = Array.from({ length: STEPS }, (): number[] => []);
  for (let origin = rollingOrigin.firstOrigin; origin <= rollingOrigin.lastOrigin; origin += 1) {
    const series = { values: values.slice(0, origin), seasonLength: frequency };
    const forecast = chosenForecast(series, STEPS).forecast(STEPS);
    for (const [step, value] of values.slice(origin, origin + STEPS).entries()) {
      errors[step]?.push(Math.abs(value - (forecast[step] ?? Number.NaN)));
    }
  }
  return errors.map(mean);
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
