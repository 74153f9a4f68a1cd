import { describe, expect, it } from "vitest";
import { gridMean, gridOf } from "#lib/statistics/grid-distribution";
import { repeatedGrid } from "#lib/statistics/repeated-grid";

describe("a sum of amounts that are alike", () => {
  it("has the binomial chances of coins", () => {
    expect([...repeatedGrid(gridOf(1, [1, 1]), 4).chances].map((chance) => 16 * chance)).toEqual([
      1, 4, 6, 4, 1,
    ]);
  });

  it("is nothing for none, and itself for one", () => {
    const grid = gridOf(5, [1, 3]);
    expect([...repeatedGrid(grid, 0).chances]).toEqual([1]);
    expect(repeatedGrid(grid, 1)).toEqual(grid);
    expect(gridMean(repeatedGrid(grid, 6))).toBeCloseTo(6 * gridMean(grid), 12);
  });

  it("asks for a whole number", () => {
    expect(() => repeatedGrid(gridOf(1, [1]), 1.5)).toThrow(/from 0, got 1.5/);
    expect(() => repeatedGrid(gridOf(1, [1]), -1)).toThrow(RangeError);
  });
});
