import { describe, expect, it } from "vitest";
import { combinations, leastOf, leastOfEachAlpha } from "#lib/forecast/methods/search-starts";

/** Squares add up to least at 3, 1. */
const residuals = ([a = 0, b = 0]: readonly number[]) => [a - 3, b - 1];

describe("starts of a search", () => {
  it("are all combinations of the values given", () => {
    expect(combinations([[1, 2], [3], [4, 5]])).toEqual([
      [1, 3, 4],
      [1, 3, 5],
      [2, 3, 4],
      [2, 3, 5],
    ]);
    expect(combinations([])).toEqual([[]]);
  });

  it("are the points with the least sums of squares, best first", () => {
    // 4 + 0, 0 + 4, 0 + 1
    const points = [
      [1, 1],
      [3, 3],
      [3, 2],
    ];
    expect(leastOf(points, residuals, 2)).toEqual([
      [3, 2],
      [1, 1],
    ]);
    expect(leastOf(points, residuals, 9)).toHaveLength(3);
    const broken = [[Number.NaN, 1], ...points];
    expect(leastOf(broken, residuals, 4).at(-1)).toEqual([Number.NaN, 1]);
  });

  it("keep one point of each first parameter, however far off", () => {
    const points = [
      [3, 2],
      [3, 1],
      [9, 8],
      [9, 5],
    ];
    expect(leastOfEachAlpha(points, residuals)).toEqual([
      [3, 1],
      [9, 5],
    ]);
  });
});
