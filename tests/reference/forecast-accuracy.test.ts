import { mean } from "simple-statistics";
import { describe, expect, it } from "vitest";
import { openSeriesScores } from "../../app/command-line/bench/forecast/open-series";

/*
 * Mean absolute errors of `ets` and `thetaf` of the R package `forecast` 8.20
 * (https://pkg.robjhyndman.com/forecast/) on 26 open series, refitted at every origin, 1 to 4 steps ahead, and
 * the scale: the mean absolute change in a season's time (or a step's), as in Hyndman and Koehler (2006),
 * https://doi.org/10.1016/j.ijforecast.2006.03.001. Sources of the series in data/README-forecast.md.
 */
const FITTING_MS = 240_000;

describe("the chosen forecast against automatic methods of the R package, refitted at every origin", () => {
  it(
    "has a smaller scaled error on average over 26 series, and on no series is far behind both",
    () => {
      const scored = openSeriesScores();
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
