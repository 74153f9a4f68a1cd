import { mean, median } from "simple-statistics";
import type { Forecaster } from "#lib/forecast/methods/forecasting-method";

/** What a combination needs of each of its members, and what it gives. */
export type Forecasting = Pick<Forecaster, "forecast" | "forecastAfter">;

const CENTRES = { mean, median } as const;

/**
 * Several forecasts as one: at each step the mean of them, all weighing the same, or the median, which one
 * member gone astray cannot move.
 *
 * @param members at least one
 * @param centre "mean" or "median"
 * @returns their combination
 * @throws RangeError when there is no member
 * @see Bates and Granger (1969), The combination of forecasts, Operational Research Quarterly 20 (from memory)
 * @example combined([naive.fitted(series), meanMethod.fitted(series)], "mean").forecast(3)
 */
export function combined(members: readonly Forecasting[], centre: keyof typeof CENTRES): Forecasting {
  if (members.length === 0) throw new RangeError("combined requires a member, got none");
  const centreOf = (forecasts: readonly (readonly number[])[], steps: number): number[] =>
    Array.from({ length: steps }, (_, step) =>
      CENTRES[centre](forecasts.map((forecast) => forecast[step] ?? Number.NaN)),
    );
  return {
    forecast: (steps) => {
      const forecasts = members.map((member) => member.forecast(steps));
      return centreOf(forecasts, steps);
    },
    forecastAfter: (count, steps) => {
      const forecasts = members.map((member) => member.forecastAfter(count, steps));
      return centreOf(forecasts, steps);
    },
  };
}
