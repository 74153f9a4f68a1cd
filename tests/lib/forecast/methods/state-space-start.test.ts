import { describe, expect, it } from "vitest";
import { stateSpaceStart } from "#lib/forecast/methods/state-space-start";

const error = "additive";

describe("start of a state space model", () => {
  it("is the mean of the first ten values, or the line through them", () => {
    const series = { values: [3, 5, 7, 9, 11, 13, 15, 17, 19, 21, 900], seasonLength: 1 };
    expect(stateSpaceStart({ error, trend: "none", season: "none" }, series)).toEqual({
      level: 12,
      trend: 0,
      seasons: [],
    });
    const line = stateSpaceStart({ error, trend: "damped", season: "none" }, series);
    expect(line.level).toBeCloseTo(1, 12);
    expect(line.trend).toBeCloseTo(2, 12);
  });

  it("comes from the first two seasons where there is one", () => {
    // Seasons of mean 10 and 14: 4 over two values, 2 a value.
    const series = { values: [8, 12, 12, 16], seasonLength: 2 };
    const start = (trend: "none" | "additive", season: "additive" | "multiplicative") =>
      stateSpaceStart({ error: "multiplicative", trend, season }, series);
    expect(start("additive", "additive")).toEqual({ level: 10, trend: 2, seasons: [-2, 2] });
    expect(start("none", "multiplicative")).toEqual({ level: 10, trend: 0, seasons: [0.8, 1.2] });
  });
});
