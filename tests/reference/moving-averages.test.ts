import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { movingAverage } from "#lib/forecast/moving-average";
import { protectionErrors } from "#lib/forecast/protection-error";

// Series from the R packages named in data/README-forecast.md; errors computed in R, 10 significant digits.
type Errors = {
  nErrors: number;
  sse: number;
  mse: number;
  mae: number;
  fittedFirst: number[];
  nextForecast: number;
};
type Series = {
  name: string;
  values: number[];
  movingAverage4: Errors;
  movingAverage8: Errors;
  rollingOrigin4: { firstOrigin: number; nErrors: number[]; rmseByHorizon: number[]; maeByHorizon: number[] };
};
const file = new URL("./data/moving-averages.json", import.meta.url);
const { series }: { series: Series[] } = JSON.parse(readFileSync(file, "utf8"));
const cases = series.flatMap((each) => [
  { name: each.name, window: 4, values: each.values, expected: each.movingAverage4 },
  { name: each.name, window: 8, values: each.values, expected: each.movingAverage8 },
]);
const RELATIVE = 1e-8;

function close(actual: number, expected: number): void {
  expect(Math.abs(actual - expected)).toBeLessThanOrEqual(RELATIVE * Math.max(1e-300, Math.abs(expected)));
}

describe("moving average against R", () => {
  it("reads seven series", () => {
    expect(series).toHaveLength(7);
  });

  it.each(cases)("$name, $window values: the next forecast", ({ values, window, expected }) => {
    close(movingAverage(values, window), expected.nextForecast);
  });

  it.each(cases)("$name, $window values: the first forecasts inside the series", (each) => {
    const { values, window, expected } = each;
    expected.fittedFirst.forEach((fitted, index) => {
      close(movingAverage(values.slice(0, window + index), window), fitted);
    });
    expect(expected.fittedFirst.length).toBeGreaterThan(0);
  });

  it.each(cases)("$name, $window values: number and size of the errors one step ahead", (each) => {
    const { values, window, expected } = each;
    const method = { kind: "simple", window } as const;
    const errors = protectionErrors({ values, method, horizonWeeks: 1, firstOrigin: window });
    const squares = errors.reduce((sum, error) => sum + error * error, 0);
    expect(errors).toHaveLength(expected.nErrors);
    close(squares, expected.sse);
    close(squares / errors.length, expected.mse);
    close(errors.reduce((sum, error) => sum + Math.abs(error), 0) / errors.length, expected.mae);
  });

  it.each(series)("$name: rolling origin errors one step ahead from the given origin on", (each) => {
    const { firstOrigin, nErrors, rmseByHorizon, maeByHorizon } = each.rollingOrigin4;
    const method = { kind: "simple", window: 4 } as const;
    const errors = protectionErrors({ values: each.values, method, horizonWeeks: 1, firstOrigin });
    expect(errors).toHaveLength(nErrors[0] ?? Number.NaN);
    close(Math.sqrt(errors.reduce((s, e) => s + e * e, 0) / errors.length), rmseByHorizon[0] ?? Number.NaN);
    close(errors.reduce((s, e) => s + Math.abs(e), 0) / errors.length, maeByHorizon[0] ?? Number.NaN);
  });

  it.each(series)(
    "$name: the error of a sum of two steps is the sum of the errors one and two steps ahead",
    (each) => {
      const { values, rollingOrigin4 } = each;
      const method = { kind: "simple", window: 4 } as const;
      const firstOrigin = rollingOrigin4.firstOrigin;
      const oneStep = protectionErrors({ values, method, horizonWeeks: 1, firstOrigin });
      const sums = protectionErrors({ values, method, horizonWeeks: 2, firstOrigin });
      const secondStep = sums.map((sum, index) => sum - (oneStep[index] ?? Number.NaN));
      expect(sums).toHaveLength(rollingOrigin4.nErrors[1] ?? Number.NaN);
      close(
        Math.sqrt(secondStep.reduce((s, e) => s + e * e, 0) / secondStep.length),
        rollingOrigin4.rmseByHorizon[1] ?? Number.NaN,
      );
    },
  );
});
