import { describe, expect, it } from "vitest";
import type { MethodParameters } from "#lib/forecast/methods/forecasting-method";
import { givenStateSpace, stateSpaceParameters } from "#lib/forecast/methods/state-space-parameters";

const series = { values: [8, 12, 12, 16], seasonLength: 2 };
const given = (parameters: MethodParameters, seen = series) => givenStateSpace("smoothing", seen, parameters);

describe("parameters of a state space model", () => {
  it("name the constants and states that it has", () => {
    const constants = { alpha: 0.3, betaStar: 0.1, phi: 0.9, gamma: 0.2 };
    const start = { level: 10, trend: 2, seasons: [0.5, 1.5] };
    const damped = { error: "multiplicative", trend: "damped", season: "multiplicative" } as const;
    const all = stateSpaceParameters({ model: damped, constants, start });
    expect(all).toEqual({
      ...constants,
      multiplicativeError: 1,
      multiplicativeSeason: 1,
      level: 10,
      trend: 2,
      season1: 0.5,
      season2: 1.5,
    });
    expect(given(all)).toEqual({ model: damped, constants, start });
    const plain = {
      model: { error: "additive", trend: "none", season: "none" },
      constants: { alpha: 0.3, betaStar: 0, phi: 1, gamma: 0 },
      start: { level: 10, trend: 0, seasons: [] },
    } as const;
    expect(stateSpaceParameters(plain)).toEqual({ alpha: 0.3, level: 10 });
    expect(given({ alpha: 0.3, level: 10 })).toEqual(plain);
  });

  it("leave the start to the first values where they give none", () => {
    const { model, start } = given({ alpha: 0.3, betaStar: 0.1, gamma: 0.2 });
    expect(model).toEqual({ error: "additive", trend: "additive", season: "additive" });
    expect(start).toEqual({ level: 10, trend: 2, seasons: [-2, 2] });
  });

  it.each([
    [{}, "a number for alpha, got undefined"],
    [{ alpha: 0.3, betaStar: Number.NaN }, "a number for betaStar, got NaN"],
    [{ alpha: 0.3, phi: 0.9 }, "a number for betaStar, got undefined"],
    [{ alpha: 0.3, betaStar: 0.1, phi: Number.NaN }, "a number for phi, got NaN"],
    [{ alpha: 0.3, gamma: Number.NaN }, "a number for gamma, got NaN"],
    [{ alpha: 0.3, level: Number.NaN }, "a number for level, got NaN"],
    [{ alpha: 0.3, betaStar: 0.1, level: 10 }, "a number for trend, got undefined"],
    [{ alpha: 0.3, gamma: 0.1, level: 10, season1: 1 }, "a number for season2, got undefined"],
    [
      { alpha: 0.3, gamma: 0.1, multiplicativeSeason: 1 },
      "multiplicativeError 1 with multiplicativeSeason 1",
    ],
    [{ alpha: 0.3, multiplicativeError: 1, multiplicativeSeason: 1 }, "a number for gamma, got undefined"],
  ])("refuse %o: it requires %s", (parameters, wanted) => {
    expect(() => given(parameters)).toThrow(new RangeError(`smoothing requires ${wanted}`));
  });

  it("refuse a model that does not suit the series", () => {
    const zeros = { values: [0, 3, 4, 5], seasonLength: 2 };
    expect(() => given({ alpha: 0.3, multiplicativeError: 1 }, zeros)).toThrow(
      new RangeError("smoothing requires values above 0 for multiplicativeError 1, got 0"),
    );
    const season = { alpha: 0.3, gamma: 0.1 };
    expect(() => given(season, { ...zeros, seasonLength: 1 })).toThrow(
      new RangeError("smoothing requires a season of 2 or more, got 1"),
    );
    expect(() => given(season, { ...zeros, seasonLength: 3 })).toThrow(
      new RangeError("smoothing requires 6 values for a season, got 4"),
    );
  });
});
