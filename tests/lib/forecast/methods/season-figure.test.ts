import { describe, expect, it } from "vitest";
import { decomposition } from "#lib/forecast/methods/season-figure";

describe("classical decomposition", () => {
  it("centres the average over an even season with half weights at the ends", () => {
    // (10 + 2 x 32 + 14) / 4 = 22, (32 + 2 x 14 + 36) / 4 = 24; less them: 32 - 22 = 10, 14 - 24 = -10
    const { trend, figure } = decomposition({ values: [10, 32, 14, 36], seasonLength: 2 }, "additive");
    expect(trend).toEqual([null, 22, 24, null]);
    expect(figure).toEqual([-10, 10]);
  });

  it("centres the average over an odd season on the middle value", () => {
    // A flat 10 with factors 0.5, 1, 1.5: each mean of three is 10.
    const values = [5, 10, 15, 5, 10, 15];
    const { trend, figure } = decomposition({ values, seasonLength: 3 }, "multiplicative");
    expect(trend).toEqual([null, 10, 10, 10, 10, null]);
    for (const [place, factor] of [0.5, 1, 1.5].entries()) expect(figure[place]).toBeCloseTo(factor, 12);
  });

  it("refuses less than two seasons, and seasons of one value", () => {
    expect(() => decomposition({ values: [1, 2, 3], seasonLength: 2 }, "additive")).toThrow(RangeError);
    expect(() => decomposition({ values: [1, 2, 3], seasonLength: 1 }, "additive")).toThrow(RangeError);
  });
});
