import { describe, expect, it } from "vitest";
import { stateSpaceFits } from "#lib/forecast/methods/state-space-fits";
import { stateSpaceModels } from "#lib/forecast/methods/state-space-model";

describe("state space models fitted to a series", () => {
  const best = (values: number[], seasonLength: number) => stateSpaceFits({ values, seasonLength })[0].model;

  it("are all that suit it, the least corrected Akaike criterion first", () => {
    const series = { values: [12, 15, 11, 17, 14, 18, 13, 21, 16, 22, 15, 26], seasonLength: 2 };
    const fits = stateSpaceFits(series);
    const models = fits.map(({ model }) => model);
    expect(models).toHaveLength(stateSpaceModels(series).length);
    expect(models).toEqual(expect.arrayContaining(stateSpaceModels(series)));
    const criteria = fits.map(({ correctedAkaike }) => correctedAkaike);
    expect(criteria).toEqual(criteria.toSorted((a, b) => a - b));
    expect(new Set(criteria).size).toBeGreaterThan(1);
  });

  it("have the simplest of perfect ones first", () => {
    expect(best(new Array<number>(12).fill(7), 2)).toEqual({
      error: "additive",
      trend: "none",
      season: "none",
    });
    const line = Array.from({ length: 12 }, (_, week) => 5 + 3 * week);
    expect(best(line, 1)).toEqual({ error: "additive", trend: "additive", season: "none" });
    const season = Array.from({ length: 16 }, (_, week) => [5, 9, 4, 2][week % 4] ?? Number.NaN);
    expect(best(season, 4)).toEqual({ error: "additive", trend: "none", season: "additive" });
  });

  it("tell errors that grow with the line from errors of one size", () => {
    // An even line from 10 to 322; the sine of squares jumps about.
    const weeks = Array.from({ length: 40 }, (_, week) => ({
      line: 10 + 8 * week,
      off: Math.sin(week ** 2),
    }));
    const growing = weeks.map(({ line, off }) => line * (1 + 0.15 * off));
    expect(best(growing, 1).error).toBe("multiplicative");
    const even = weeks.map(({ line, off }) => line + 5 * off);
    expect(best(even, 1).error).toBe("additive");
  });

  it("need five values", () => {
    expect(() => stateSpaceFits({ values: [1, 2, 3, 4], seasonLength: 1 })).toThrow(
      new RangeError("stateSpaceFits requires 5 values, got 4"),
    );
  });
});
