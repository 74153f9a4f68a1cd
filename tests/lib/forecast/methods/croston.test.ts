import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { croston, syntetosBoylan } from "#lib/forecast/methods/croston";

const series = (values: readonly number[]) => ({ values, seasonLength: 1 });
const zeros = (count: number) => new Array<number>(count).fill(0);

describe("size over interval", () => {
  it("smooths sizes and intervals when there is a use", () => {
    // First use 4 after 2 weeks: 4 / 2. Then 8 after 3 weeks: size 4 + 0.5 (8 - 4) = 6, interval
    // 2 + 0.5 (3 - 2) = 2.5: 6 / 2.5 = 2.4 a week.
    const forecaster = croston.fixed(series([0, 4, 0, 0, 8]), { alpha: 0.5 });
    expect(forecaster.forecast(2)).toEqual([2.4, 2.4]);
    // Before a use it says 0: 4 - 0, then 0 - 2 twice, then 8 - 2.
    expect(forecaster.errors).toEqual([4, -2, -2, 6]);
  });

  it("is lower by half its constant with the correction of its bias", () => {
    // 2.4 x (1 - 0.5 / 2) = 1.8
    expect(syntetosBoylan.fixed(series([0, 4, 0, 0, 8]), { alpha: 0.5 }).forecast(1)[0]).toBeCloseTo(1.8, 12);
  });

  it("is 0 where nothing was used", () => {
    for (const method of [croston, syntetosBoylan]) {
      expect(method.fixed(series(zeros(9)), { alpha: 0.1 }).forecast(2)).toEqual([0, 0]);
      expect(method.fitted(series(zeros(9))).forecast(2)).toEqual([0, 0]);
    }
  });

  it("does not fade for an item that is no longer used", () => {
    const used = [3, 0, 2, 0, 4, 1];
    const now = croston.fixed(series(used), { alpha: 0.1 }).forecast(1);
    expect(croston.fixed(series([...used, ...zeros(50)]), { alpha: 0.1 }).forecast(1)).toEqual(now);
  });

  it("fits a constant from 0.01 to 0.5, with no more squared error than 0.1 or 0.3", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 6 }), { minLength: 4, maxLength: 30 }), (values) => {
        const squares = (errors: readonly number[]) => errors.reduce((sum, error) => sum + error * error, 0);
        const fitted = croston.fitted(series(values));
        expect(fitted.parameters.alpha).toBeGreaterThanOrEqual(0.01);
        expect(fitted.parameters.alpha).toBeLessThanOrEqual(0.5);
        for (const alpha of [0.1, 0.3]) {
          const other = squares(croston.fixed(series(values), { alpha }).errors);
          expect(squares(fitted.errors)).toBeLessThanOrEqual(other + 1e-9);
        }
      }),
      { numRuns: 30 },
    );
  });
});
