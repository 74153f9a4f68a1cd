import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { backtest, runningTotalLoss } from "#lib/forecast/backtest";
import { simpleAverage } from "#lib/forecast/methods/average-methods";
import { naive } from "#lib/forecast/methods/naive";

describe("backtest with a rolling origin", () => {
  it("says from each week on what came less what was said, as far as values reach", () => {
    const values = [1, 4, 2, 7];
    const forecaster = naive.fixed({ values, seasonLength: 1 }, {});
    // After 2 values it says 4: 2 - 4, 7 - 4; after 3 it says 2: 7 - 2.
    expect(backtest(forecaster, values, { firstOrigin: 2, steps: 2 })).toEqual({
      firstOrigin: 2,
      errors: [[-2, 3], [5]],
    });
  });

  it("has no look where all values are needed first", () => {
    const forecaster = naive.fixed({ values: [1, 2], seasonLength: 1 }, {});
    expect(backtest(forecaster, [1, 2], { firstOrigin: 2, steps: 3 }).errors).toEqual([]);
  });

  it("looks one step ahead at what a method calls its errors", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 50 }), { minLength: 5, maxLength: 20 }), (values) => {
        const forecaster = simpleAverage.fixed({ values, seasonLength: 1 }, { window: 4 });
        const looked = backtest(forecaster, values, { firstOrigin: 4, steps: 1 });
        expect(looked.errors.flat()).toEqual(forecaster.errors);
      }),
    );
  });
});

describe("error of running totals", () => {
  it("is the root mean of the squared totals, each over its steps", () => {
    // Totals -2 and -2 + 3 = 1, and 5: (4 / 1 + 1 / 2 + 25 / 1) / 3 = 29.5 / 3
    const errors = [[-2, 3], [5]];
    expect(runningTotalLoss({ firstOrigin: 2, errors })).toBeCloseTo(Math.sqrt(29.5 / 3), 12);
  });

  it("weighs an error that repeats itself more than one that evens out", () => {
    const repeated = runningTotalLoss({ firstOrigin: 4, errors: [[2, 2, 2]] }) ?? Number.NaN;
    const evened = runningTotalLoss({ firstOrigin: 4, errors: [[2, -2, 2]] }) ?? Number.NaN;
    // (4 + 16 / 2 + 36 / 3) / 3 = 8; (4 + 0 + 4 / 3) / 3 = 16 / 9
    expect(repeated).toBeCloseTo(Math.sqrt(8), 12);
    expect(evened).toBeCloseTo(4 / 3, 12);
  });

  it("is unknown without a look", () => {
    expect(runningTotalLoss({ firstOrigin: 4, errors: [] })).toBeNull();
  });
});
