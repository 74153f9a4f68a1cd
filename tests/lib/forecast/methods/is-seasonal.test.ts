import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isSeasonal } from "#lib/forecast/methods/is-seasonal";

const weeks = (count: number, use: (week: number) => number) =>
  Array.from({ length: count }, (_, week) => use(week));

describe("test for a season", () => {
  it("sees a season that repeats itself, and none in a series of another rhythm", () => {
    const values = weeks(24, (week) => [1, 5, 9, 5][week % 4] ?? 0);
    expect(isSeasonal({ values, seasonLength: 4 })).toBe(true);
    expect(isSeasonal({ values, seasonLength: 3 })).toBe(false);
  });

  it("holds the lag's own weight against what the shorter lags explain", () => {
    // Mean 0.2, so off it 0.8, -1.2, 0.8, -1.2, 0.8, whose squares add up to 4.8:
    // r1 = 4 x (-0.96) / 4.8 = -0.8; r2 = (0.64 + 1.44 + 0.64) / 4.8 = 0.5667.
    // 0.5667 / sqrt((1 + 2 x 0.64) / 5) = 0.839, below 1.645.
    expect(isSeasonal({ values: [1, -1, 1, -1, 1], seasonLength: 2 })).toBe(false);
  });

  it("sees none in two seasons or fewer, in equal values, or in seasons of one", () => {
    const values = weeks(8, (week) => week % 4);
    expect(isSeasonal({ values, seasonLength: 4 })).toBe(false);
    expect(isSeasonal({ values: weeks(40, () => 3), seasonLength: 4 })).toBe(false);
    expect(isSeasonal({ values: weeks(40, (week) => week % 4), seasonLength: 1 })).toBe(false);
  });

  it("says the same whatever the size of the uses", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 30 }), { minLength: 9, maxLength: 24 }), (values) => {
        const scaled = values.map((value) => 8 * value);
        expect(isSeasonal({ values: scaled, seasonLength: 4 })).toBe(isSeasonal({ values, seasonLength: 4 }));
      }),
    );
  });
});
