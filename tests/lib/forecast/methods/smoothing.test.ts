import { describe, expect, it } from "vitest";
import {
  type SmoothingRule,
  smooth,
  smoothingForecast,
  smoothingVarianceGrowth,
} from "#lib/forecast/methods/smoothing";

const rule = (over: Partial<SmoothingRule>): SmoothingRule => ({
  constants: { alpha: 0.5, betaStar: 0.5, phi: 1, gamma: 0.5 },
  season: "none",
  seasonFrom: "old-level",
  ...over,
});
const start = { level: 20, trend: 2, seasons: [-10, 10] };

describe("exponential smoothing", () => {
  it("leaves the state as it is where there is no value", () => {
    expect(smooth([], rule({ season: "additive" }), start)).toEqual({ errors: [], state: start });
  });

  it("renews an added season from the line before the value, or from the level after it", () => {
    // Line 22, says 12, is 14: level 0.5 x 24 + 0.5 x 22 = 23; trend 0.5 x 3 + 0.5 x 2 = 2.5.
    // From the line: 0.5 (14 - 22) + 0.5 (-10) = -9; from the level: 0.5 (14 - 23) + 0.5 (-10) = -9.5.
    const from = (seasonFrom: SmoothingRule["seasonFrom"]) =>
      smooth([14], rule({ season: "additive", seasonFrom }), start);
    expect(from("old-level")).toEqual({ errors: [2], state: { level: 23, trend: 2.5, seasons: [10, -9] } });
    expect(from("new-level").state.seasons).toEqual([10, -9.5]);
  });

  it("renews a season factor by division", () => {
    // Line 22, says 11, is 22: level 0.5 x 44 + 0.5 x 22 = 33; trend 0.5 x 13 + 0.5 x 2 = 7.5; factor
    // 0.5 (22 / 22) + 0.5 x 0.5 = 0.75.
    const { errors, state } = smooth([22], rule({ season: "multiplicative" }), {
      ...start,
      seasons: [0.5, 1.5],
    });
    expect(errors).toEqual([11]);
    expect(state).toEqual({ level: 33, trend: 7.5, seasons: [1.5, 0.75] });
  });

  it("forecasts the level, the damped trend added up, and the season that comes", () => {
    const damped = rule({
      constants: { alpha: 0, betaStar: 0, phi: 0.5, gamma: 0 },
      season: "additive",
    });
    // 20 + 2 x 0.5 - 10, 20 + 2 x 0.75 + 10, 20 + 2 x 0.875 - 10
    expect(smoothingForecast(start, damped, 3)).toEqual([11, 31.5, 11.75]);
  });
});

describe("growth of the variance with the steps ahead", () => {
  it("adds the squares of what an error does to later steps", () => {
    // c1 = 0.5 + 0.5 x 0.5 x 1 = 0.75; c2 = 0.5 + 0.25 x 2 + 0.5 (season of 2) = 1.5
    const growth = smoothingVarianceGrowth(rule({ season: "additive" }), 2, 3);
    expect(growth).toEqual([1, 1 + 0.5625, 1 + 0.5625 + 2.25]);
    // Without a season c2 = 1.
    expect(smoothingVarianceGrowth(rule({}), 2, 3)).toEqual([1, 1.5625, 2.5625]);
  });
});
