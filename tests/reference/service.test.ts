import { expect } from "vitest";
import { simpleSmoothing } from "#lib/forecast/methods/simple-smoothing";
import { fillRate, fillRateFactor } from "#lib/replenishment/exact-policy/fill-rate";
import { undershootMean } from "#lib/replenishment/exact-policy/undershoot-mean";
import { economicOrderQuantity } from "#lib/replenishment/order-quantity/economic-order-quantity";
import { safetyStock, serviceFactor } from "#lib/replenishment/safety-stock";
import { undershoot } from "#lib/replenishment/undershoot";
import { gridMean, gridOf, gridQuantile, gridUpTo } from "#lib/statistics/grid-distribution";
import { negativeBinomialQuantile } from "#lib/statistics/negative-binomial-quantile";
import { normalDraw } from "#lib/statistics/normal-draw";
import { normalQuantile } from "#lib/statistics/normal-quantile";
import { poissonQuantile } from "#lib/statistics/poisson-quantile";
import { repeatedGrid } from "#lib/statistics/repeated-grid";
import { studentTQuantile } from "#lib/statistics/student-t-quantile";
import { unitNormalLoss } from "#lib/statistics/unit-normal-loss";
import { seeded } from "../lib/forecast/seeded-counts";
import { poissonGrid } from "../lib/statistics/poisson-grid";
import { checkInventoryCases, type GivenCase } from "./inventory-cases";

/** Safety stock of days that are alike, of a lead time that may vary. */
function varyingDays(given: GivenCase, factor: number): number {
  const days = given.number("leadTimeDays");
  const ofUse = days * given.number("sdPerDay") ** 2;
  const ofLeadTime =
    given.input["sdLeadTimeDays"] === undefined
      ? 0
      : given.number("meanPerDay") ** 2 * given.number("sdLeadTimeDays") ** 2;
  const deviation = Math.sqrt(ofUse + ofLeadTime);
  if (given.expected["sdLeadTimeDemand"] !== undefined) given.meets("sdLeadTimeDemand", deviation);
  const safety = safetyStock(factor, deviation);
  given.meets("safetyStock", safety);
  return given.number("meanPerDay") * days + safety;
}

function usualFillRate(given: GivenCase): void {
  const terms = {
    lot: given.number("Q"),
    share: given.number("fillRate"),
    deviation: given.number("sdLT"),
  };
  const factor = fillRateFactor(terms);
  given.meets("k", factor);
  given.meets("G", unitNormalLoss(factor));
  given.meets("reorderPoint", given.number("meanLT") + factor * terms.deviation);
}

checkInventoryCases("service", {
  "safety-stock-variable-demand": (given) =>
    given.meets("reorderPoint", varyingDays(given, given.number("z"))),
  "safety-stock-variable-lead-time-only": (given) =>
    given.meets("reorderPoint", varyingDays(given, serviceFactor(given.number("cycleService")))),
  "safety-stock-both-variable": (given) => {
    varyingDays(given, given.number("z"));
  },
  "q-r-simple": (given) => {
    given.meets(
      "Q",
      economicOrderQuantity({
        orderCost: given.number("K"),
        holdingCost: given.number("h"),
        yearlyUse: given.number("D"),
      }),
    );
    given.meets("reorderPoint", varyingDays(given, serviceFactor(given.number("cycleService"))));
    given.meets("leadTimeDemand", given.number("meanPerDay") * given.number("leadTimeDays"));
  },
  "reorder-point-from-lead-time-distribution": (given) => {
    const safety = safetyStock(serviceFactor(1 - given.number("stockoutRisk")), given.number("sdLT"));
    given.meets("safetyStock", safety);
    given.meets("reorderPoint", given.number("meanLT") + safety);
  },
  "unit-normal-loss": (given) => given.meets("G", given.numbers("k").map(unitNormalLoss)),
  "fill-rate-backorders": usualFillRate,
  "cycle-service": (given) => {
    const factor = serviceFactor(given.number("cycleService"));
    given.meets("k", factor);
    given.meets("reorderPoint", given.number("meanLT") + safetyStock(factor, given.number("sdLT")));
  },
  "fill-rate-negative-safety-factor": usualFillRate,
  "periodic-review-target-level": (given) => {
    const level = (weeks: number) =>
      weeks * given.number("meanPerWeek") +
      safetyStock(given.number("z"), given.number("sdPerWeek") * Math.sqrt(weeks));
    given.meets("continuousReorderPoint", level(given.number("leadTimeWeeks")));
    given.meets("targetLevel", level(given.number("leadTimeWeeks") + given.number("reviewWeeks")));
  },
  "fill-rate-periodic-review-exact": (given) => {
    const found = fillRate({
      orderUpTo: given.number("S"),
      period: { mean: given.number("meanPerPeriod"), deviation: given.number("sdPerPeriod") },
      reviewPeriods: given.number("reviewPeriods"),
      leadTimePeriods: given.number("leadTimePeriods"),
    });
    given.meets("fillRateExact", found.exact);
    given.meets("fillRateTraditional", found.usual);
  },
  "undershoot-mean-discrete": (given) => {
    expect(given.input["demandPerReview"]).toBe("Poisson");
    const mean = given.number("mean");
    given.meets("meanUndershoot", undershootMean({ mean, deviation: Math.sqrt(mean), whole: true }));
    given.meets("meanUndershoot", gridMean(undershoot(poissonGrid(mean), true)));
  },
  "undershoot-mean-continuous": (given) =>
    given.meets(
      "meanUndershoot",
      undershootMean({
        mean: given.number("meanPerReview"),
        deviation: given.number("sdPerReview"),
        whole: false,
      }),
    ),
  "lead-time-forecast-error-variance": errorOfSums,
  "short-history-safety-stock": (given) => {
    const [n, periods] = [given.number("n"), given.number("leadTime")];
    const service = given.number("cycleService");
    const factor = studentTQuantile(service, n - 1);
    given.meets("tQuantile", factor);
    const deviation = given.number("sampleSd") * Math.sqrt(periods + periods ** 2 / n);
    given.meets("safetyStock", safetyStock(factor, deviation));
    const naive = given.number("sampleSd") * Math.sqrt(periods);
    given.meets("naiveSafetyStock", safetyStock(serviceFactor(service), naive));
  },
  "negative-binomial-lead-time-demand": (given) => {
    const [mean, variance] = [given.number("meanLT"), given.number("varianceLT")];
    const levels = given.numbers("levels");
    const size = mean ** 2 / (variance - mean);
    given.meets("r", size);
    given.meets("p", mean / variance);
    given.equals(
      "quantiles",
      levels.map((level) => negativeBinomialQuantile(level, { mean, size })),
    );
    given.equals(
      "poissonQuantiles",
      levels.map((level) => poissonQuantile(level, mean)),
    );
    given.meets(
      "normalQuantiles",
      levels.map((level) => mean + normalQuantile(level) * Math.sqrt(variance)),
    );
  },
  "lead-time-demand-exact-resampling": (given) => {
    const history = given.numbers("history");
    const counted = Array.from(
      { length: Math.max(...history) + 1 },
      (_, count) => history.filter((each) => each === count).length,
    );
    const use = repeatedGrid(gridOf(1, counted), given.number("leadTime"));
    given.meets("mean", gridMean(use));
    given.meets("pZero", gridUpTo(use, 0));
    given.equals(
      "quantiles",
      given.numbers("levels").map((level) => gridQuantile(use, level)),
    );
    given.meets("cdfAt3", gridUpTo(use, 3));
  },
});

/**
 * The program learns the error of sums from looks back and has no such formula, so that it stands here; the errors that
 * the program's smoothing makes on long series of both kinds must have these variances, to 3.5 standard errors, which
 * forty independent series give.
 */
function errorOfSums(given: GivenCase): void {
  const [alpha, periods, variance] = [
    given.number("alpha"),
    given.number("leadTime"),
    given.number("sigma2"),
  ];
  const alike = variance * (periods + (periods ** 2 * alpha) / (2 - alpha));
  const wandering =
    variance * periods * (1 + alpha * (periods - 1) + (alpha ** 2 * (periods - 1) * (2 * periods - 1)) / 6);
  const oneStep = (variance * 2) / (2 - alpha);
  given.meets("iidDemand_SES", alike);
  given.meets("localLevel_SES", wandering);
  given.meets("naiveOneStepTimesL", periods * oneStep);

  const { uniform } = seeded(20);
  const series = Array.from({ length: 40 }, () => {
    let level = 50;
    const chances = Array.from({ length: 10_000 }, () => Math.sqrt(variance) * normalDraw(uniform));
    const drifting = chances.map((chance) => {
      level += alpha * chance;
      return level - alpha * chance + chance;
    });
    return { steady: chances.map((chance) => 50 + chance), drifting };
  });
  const near = (wanted: number, found: readonly number[]) => {
    const mean = found.reduce((sum, value) => sum + value, 0) / found.length;
    const squares = found.reduce((sum, value) => sum + (value - mean) ** 2, 0);
    const standardError = Math.sqrt(squares / (found.length - 1) / found.length);
    expect(standardError).toBeLessThan(0.015 * wanted);
    expect(Math.abs(mean - wanted)).toBeLessThan(3.5 * standardError);
  };
  const squares = (values: readonly number[], over: number) => meanSquare(sumErrors(values, alpha, over));
  near(
    alike,
    series.map(({ steady }) => squares(steady, periods)),
  );
  near(
    oneStep,
    series.map(({ steady }) => squares(steady, 1)),
  );
  near(
    wandering,
    series.map(({ drifting }) => squares(drifting, periods)),
  );
}

/** What came over so many periods less what smoothing said of them, once settled. */
function sumErrors(values: readonly number[], alpha: number, periods: number): number[] {
  const { errors } = simpleSmoothing.fixed({ values, seasonLength: 1 }, { alpha });
  // The first value is its own start and may have no error.
  const shift = values.length - errors.length;
  const found: number[] = [];
  for (let at = 200; at + periods <= values.length; at += 1) {
    const said = (values[at] ?? Number.NaN) - (errors[at - shift] ?? Number.NaN);
    const came = values.slice(at, at + periods).reduce((sum, value) => sum + value, 0);
    found.push(came - periods * said);
  }
  return found;
}

function meanSquare(errors: readonly number[]): number {
  return errors.reduce((sum, error) => sum + error * error, 0) / errors.length;
}
