import { readFileSync } from "node:fs";
import { mean } from "simple-statistics";
import { chosenForecast } from "#lib/forecast/chosen-forecast";
import { DATA } from "./giftware-ledger";

const STEPS = 4;

type ReferenceSeries = {
  readonly frequency: number;
  readonly values: readonly number[];
  readonly rollingOrigin: {
    readonly firstOrigin: number;
    readonly lastOrigin: number;
    readonly scale: number;
    readonly maeByHorizon: Readonly<Record<"ets" | "theta", readonly number[]>>;
  };
};

/** Scaled errors (MASE) of one open series over all origins, 1 to 4 steps ahead. */
export type SeriesScore = {
  readonly name: string;
  readonly own: number;
  readonly ets: number;
  readonly theta: number;
};

/**
 * The chosen forecast on 26 open series, refitted at every origin, beside what two automatic methods of a statistics
 * package scored there. Sources of the series and figures: tests/reference/data/README-forecast.md.
 *
 * @returns a score a series
 * @see Hyndman and Koehler (2006), Another look at measures of forecast accuracy, for the scale
 */
export function openSeriesScores(): SeriesScore[] {
  const text = readFileSync(`${DATA}forecast-methods.json`, "utf8");
  const { series }: { series: Record<string, ReferenceSeries> } = JSON.parse(text);
  return Object.entries(series).map(([name, each]) => {
    const { maeByHorizon, scale } = each.rollingOrigin;
    return {
      name,
      own: mean(chosenErrors(each)) / scale,
      ets: mean([...maeByHorizon.ets]) / scale,
      theta: mean([...maeByHorizon.theta]) / scale,
    };
  });
}

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
  return errors.map((each) => mean(each));
}
