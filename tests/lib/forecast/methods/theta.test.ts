import { describe, expect, it } from "vitest";
import { theta } from "#lib/forecast/methods/theta";

describe("theta", () => {
  it("adds half the slope of the straight line to simple smoothing", () => {
    // Level 10; 10; 11; 12.5. Slope 2, so half is 1; (1 - 0.5^3) / 0.5 = 1.75: 12.5 + 1.75, then 1 more a step.
    const forecaster = theta.fixed({ values: [10, 12, 14], seasonLength: 1 }, { alpha: 0.5 });
    expect(forecaster.forecast(2)).toEqual([14.25, 15.25]);
    // After two values: level 11, half slope 1, (1 - 0.25) / 0.5 = 1.5: says 12.5 of 14.
    expect(forecaster.errors).toEqual([1.5]);
    expect(forecaster.varianceGrowth?.(3)).toEqual([1, 1.25, 1.5]);
  });

  it("starts from the level it is given", () => {
    // 20; 20 + 0.5 (10 - 20) = 15; 15 + 0.5 (10 - 15) = 12.5; the line is flat.
    expect(theta.fixed({ values: [10, 10], seasonLength: 1 }, { alpha: 0.5, level: 20 }).forecast(1)).toEqual(
      [12.5],
    );
  });

  it("takes a season out and puts it back where there is one", () => {
    const values = Array.from({ length: 24 }, (_, week) => 20 * ([0.5, 1, 1.5, 1][week % 4] ?? Number.NaN));
    const forecaster = theta.fitted({ values, seasonLength: 4 });
    expect(forecaster.parameters.season).toBe(1);
    for (const [step, wanted] of [10, 20, 30, 20, 10].entries()) {
      expect(forecaster.forecast(5)[step]).toBeCloseTo(wanted, 6);
    }
    expect(theta.fitted({ values, seasonLength: 1 }).parameters.season).toBe(0);
  });

  it("goes without a season while it has not seen two of them", () => {
    const values = [10, 30, 10, 30, 10];
    const forecaster = theta.fixed({ values, seasonLength: 2 }, { alpha: 0.5, season: 1 });
    // 10, 30, 10: level 10, 20, 15; slope 0.
    expect(forecaster.forecastAfter(3, 1)).toEqual([15]);
    expect(forecaster.errors.length).toBe(1);
  });

  it("asks for two values, also when it looks back", () => {
    const forecaster = theta.fixed({ values: [10, 12, 14], seasonLength: 1 }, { alpha: 0.5 });
    expect(() => forecaster.forecastAfter(1, 1)).toThrow(RangeError);
  });
});
