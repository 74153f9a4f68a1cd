import { describe, expect, it } from "vitest";
import { comingPath, STEPS } from "#lib/forecast/shop/coming-path";
import { addDays } from "#lib/units/day";
import { RUNNING_WEEK } from "./shop-history-fixture";

const weeks = (count: number) => Array.from({ length: count }, (_, week) => addDays(RUNNING_WEEK, 7 * week));
const rising = { forecast: (steps: number) => Array.from({ length: steps }, (_, step) => 10 + step) };

describe("path of the coming weeks", () => {
  it("starts with the running week, and puts season and events back", () => {
    const path = comingPath(rising, { coming: weeks(3), factors: [1, 2, 0.5] });
    expect(path).toEqual({ firstWeek: RUNNING_WEEK, perWeek: [10, 22, 6] });
  });

  it("carries a trend on for thirteen weeks and no further, the season for as long as it is asked", () => {
    const factors = weeks(20).map((_, week) => (week === 19 ? 3 : 1));
    const { perWeek } = comingPath(rising, { coming: weeks(20), factors });
    expect(perWeek[STEPS - 1]).toBe(22);
    expect(perWeek.slice(STEPS)).toEqual([22, 22, 22, 22, 22, 22, 66]);
  });

  it("is never below nothing", () => {
    const falling = { forecast: (steps: number) => Array.from({ length: steps }, (_, step) => 1 - step) };
    expect(comingPath(falling, { coming: weeks(3), factors: [1, 1, 1] }).perWeek).toEqual([1, 0, 0]);
  });

  it("refuses no coming week", () => {
    expect(() => comingPath(rising, { coming: [], factors: [] })).toThrow(RangeError);
  });
});
