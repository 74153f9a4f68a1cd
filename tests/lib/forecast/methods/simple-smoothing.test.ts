import { describe, expect, it } from "vitest";
import { simpleSmoothing } from "#lib/forecast/methods/simple-smoothing";

const series = (values: readonly number[]) => ({ values, seasonLength: 1 });

describe("simple smoothing", () => {
  it("moves the level by a share of each error, from the first value on", () => {
    // 10; 10 + 0.5 (20 - 10) = 15; 15 + 0.5 (5 - 15) = 10
    const forecaster = simpleSmoothing.fixed(series([10, 20, 5]), { alpha: 0.5 });
    expect(forecaster.errors).toEqual([0, 10, -10]);
    expect(forecaster.forecast(2)).toEqual([10, 10]);
    // 1 + (h - 1) 0.25
    expect(forecaster.varianceGrowth?.(3)).toEqual([1, 1.25, 1.5]);
  });

  it("fits a constant near 1 to a walk that keeps its steps, near 0 to one that goes to and fro", () => {
    const steps = [5, 5, 9, 9, 9, 9, 2, 2, 2, 2, 2, 7, 7, 7, 7];
    expect(simpleSmoothing.fitted(series(steps)).parameters.alpha).toBeGreaterThan(0.9);
    const toAndFro = Array.from({ length: 20 }, (_, week) => (week % 2 === 0 ? 4 : 6));
    expect(simpleSmoothing.fitted(series(toAndFro)).parameters.alpha).toBeLessThan(0.05);
  });

  it("counts the constant and the level as taken from the series", () => {
    expect(simpleSmoothing.freedom(12)).toBe(2);
  });
});
