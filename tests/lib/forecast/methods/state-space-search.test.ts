import { describe, expect, it } from "vitest";
import { stateSpaceSearch } from "#lib/forecast/methods/state-space-search";

const error = "multiplicative";

describe("search of a state space model", () => {
  it("reads the constants it has, gamma as a share of what alpha leaves", () => {
    const constantsOf = (search: ReturnType<typeof stateSpaceSearch>, found: readonly number[]) =>
      search.ruleOf(found).constants;
    const all = stateSpaceSearch({ error, trend: "damped", season: "additive" });
    expect(all.constants).toHaveLength(4);
    expect(constantsOf(all, [0.75, 0.2, 0.9, 0.5])).toEqual({
      alpha: 0.75,
      betaStar: 0.2,
      phi: 0.9,
      gamma: 0.125,
    });
    const seasonal = stateSpaceSearch({ error, trend: "none", season: "multiplicative" });
    expect(constantsOf(seasonal, [0.5, 0.5])).toEqual({ alpha: 0.5, betaStar: 0, phi: 1, gamma: 0.25 });
    const line = stateSpaceSearch({ error, trend: "additive", season: "none" });
    expect(constantsOf(line, [0.5, 0.3])).toEqual({ alpha: 0.5, betaStar: 0.3, phi: 1, gamma: 0 });
  });

  it("searches the numbers of a state that the model has, and makes the same state of them again", () => {
    const state = { level: 5, trend: 2, seasons: [0.5, 1.5] };
    const search = stateSpaceSearch({ error, trend: "additive", season: "multiplicative" });
    expect(search.numbersOf(state)).toEqual([5, 2, 0.5, 1.5]);
    expect(search.stateOf(search.numbersOf(state))).toEqual(state);
    const flat = stateSpaceSearch({ error, trend: "none", season: "multiplicative" });
    expect(flat.numbersOf(state)).toEqual([5, 0.5, 1.5]);
    expect(flat.stateOf([5, 0.5, 1.5])).toEqual({ ...state, trend: 0 });
  });

  it("bounds season factors above 0, and starts within all bounds", () => {
    const search = stateSpaceSearch({ error, trend: "damped", season: "multiplicative" });
    const bounds = search.stateBoundsOf([1, 0, 1, 1]);
    expect(bounds.map(([least]) => least > 0)).toEqual([false, false, true, true]);
    const added = stateSpaceSearch({ error, trend: "none", season: "additive" }).stateBoundsOf([1, 0, 0]);
    expect(added.map(([least]) => least < 0)).toEqual([true, true, true]);
    for (const {
      bounds: [least, most],
      starts,
    } of search.constants) {
      expect(Math.min(...starts)).toBeGreaterThanOrEqual(least);
      expect(Math.max(...starts)).toBeLessThanOrEqual(most);
    }
  });
});
