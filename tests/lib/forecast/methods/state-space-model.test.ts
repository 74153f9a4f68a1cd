import { describe, expect, it } from "vitest";
import {
  type StateSpaceModel,
  stateSpaceFreedom,
  stateSpaceModels,
} from "#lib/forecast/methods/state-space-model";

const short = ({ error, trend, season }: StateSpaceModel): string => `${error}, ${trend}, ${season}`;
const tried = (count: number, seasonLength: number, first = 1): string[] =>
  stateSpaceModels({ values: [first, ...new Array<number>(count - 1).fill(7)], seasonLength }).map(short);

describe("state space models of a series", () => {
  it("are fifteen for values above 0 with a season, never additive errors with a season factor", () => {
    const all = tried(60, 12);
    expect(new Set(all).size).toBe(15);
    expect(all.filter((name) => name.startsWith("additive") && name.endsWith("multiplicative"))).toEqual([]);
  });

  it("are the additive ones where a value is 0 or below", () => {
    for (const first of [0, -3]) {
      const all = tried(60, 12, first);
      expect(all.length).toBe(6);
      expect(all.filter((name) => name.includes("multiplicative"))).toEqual([]);
    }
  });

  it("have no season where it is of one value, too long or not seen twice", () => {
    const plain = tried(60, 1);
    expect(plain.length).toBe(6);
    expect(plain.every((name) => name.endsWith("none"))).toBe(true);
    expect(tried(60, 25)).toEqual(plain);
    expect(tried(23, 12)).toEqual(plain);
    expect(tried(60, 24).length).toBe(15);
    expect(tried(24, 12).length).toBe(15);
  });

  it("are left out, the larger first, where the corrected criterion has no value left", () => {
    // Level and alpha: k = 3, wants 5; with a trend k = 5, wants 7; with a damped one k = 6, wants 8.
    expect(tried(4, 1)).toEqual([]);
    expect(tried(5, 1, 0)).toEqual(["additive, none, none"]);
    expect(tried(6, 1, 0)).toEqual(["additive, none, none"]);
    expect(tried(7, 1, 0)).toEqual(["additive, none, none", "additive, additive, none"]);
    expect(tried(8, 1, 0).length).toBe(3);
  });

  it("take a number for each constant and state, one season less than there are", () => {
    const error = "additive";
    // alpha, level; beta, trend; phi; gamma and eleven of twelve seasons
    expect(stateSpaceFreedom({ error, trend: "none", season: "none" }, 12)).toBe(2);
    expect(stateSpaceFreedom({ error, trend: "additive", season: "none" }, 12)).toBe(4);
    expect(stateSpaceFreedom({ error, trend: "damped", season: "additive" }, 12)).toBe(17);
  });
});
