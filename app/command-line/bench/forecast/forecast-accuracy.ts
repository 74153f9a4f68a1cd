import { mean } from "simple-statistics";
import { type Measurement, measurement } from "../../measurement";
import { giftwareForecasts } from "./giftware-forecast";
import {
  coverage,
  type GiftwareWeeks,
  giftwarePieces,
  giftwareSupplyUse,
  movingAverageQuantiles,
  saidAtEveryOrigin,
  scaledPinballLoss,
} from "./giftware-weeks";
import { openSeriesScores } from "./open-series";

const area = "forecast";
const ETS_SCORE = 0.872;
const FARTHEST_BEHIND = 1.25;
const RATIO = 0.78;
const FEWEST_COVERED = 92;
const MOST_COVERED = 98;

/** How close the forecasts come on open data, and how often the quantile was enough, beside a plain moving average. */
export function forecastAccuracy(): Measurement[] {
  const scores = openSeriesScores();
  const forecastAfter = giftwareForecasts();
  return [
    measurement({
      area,
      name: "26 open series: mean scaled error of the choice (ets 0.872)",
      value: mean(scores.map(({ own }) => own)),
      unit: "MASE",
      target: ETS_SCORE,
    }),
    measurement({
      area,
      name: "26 open series: the farthest behind the worse of ets and theta",
      value: Math.max(...scores.map(({ own, ets, theta }) => own / Math.max(ets, theta))),
      unit: "times",
      target: FARTHEST_BEHIND,
    }),
    ...giftware("pieces of an item type", giftwarePieces(), (weeks, name) =>
      forecastAfter(weeks).itemTypes.get(name),
    ),
    ...giftware("use of a supply", giftwareSupplyUse(), (weeks, name) =>
      forecastAfter(weeks).supplies.get(name),
    ),
  ];
}

type Enough = (weeksSeen: number, name: string) => number | undefined;

function giftware(what: string, weeks: GiftwareWeeks, enough: Enough): Measurement[] {
  const plain = saidAtEveryOrigin(weeks, movingAverageQuantiles);
  const own = saidAtEveryOrigin(weeks, (seen) =>
    weeks.names.map((name) => enough(seen[0]?.length ?? 0, name) ?? 0),
  );
  const row = (name: string, value: number, unit: string, target: number | null): Measurement =>
    measurement({ area, name: `giftware, ${what}, next 3 weeks: ${name}`, value, unit, target });
  const plainLoss = scaledPinballLoss(weeks, plain);
  const ownLoss = scaledPinballLoss(weeks, own);
  const covered = 100 * coverage(own);
  return [
    row("pinball loss of the 8-week average", plainLoss, "scaled", null),
    row("pinball loss of the program", ownLoss, "scaled", RATIO * plainLoss),
    row("ratio of the two", ownLoss / plainLoss, "times", RATIO),
    row("8-week average: sums within, of 100", 100 * coverage(plain), "sums", null),
    row("program: sums within, of 100", covered, "sums", MOST_COVERED),
    row("program: sums above, of 100", 100 - covered, "sums", 100 - FEWEST_COVERED),
  ];
}
