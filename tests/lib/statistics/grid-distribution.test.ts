import { describe, expect, it } from "vitest";
import {
  gridMean,
  gridMixture,
  gridOf,
  gridQuantile,
  gridQuantileBetween,
  gridShortages,
  gridSum,
  gridUpTo,
} from "#lib/statistics/grid-distribution";
import { poissonExpectedShortage, poissonProbability, poissonTails } from "#lib/statistics/poisson";

const coin = gridOf(1, [1, 1]);
const poisson = (mean: number) =>
  gridOf(
    1,
    Array.from({ length: 60 }, (_, count) => poissonProbability(count, mean)),
  );

describe("a distribution on a grid", () => {
  it("makes chances of weights, and refuses none", () => {
    expect([...gridOf(10, [1, 3]).chances]).toEqual([0.25, 0.75]);
    expect(() => gridOf(1, [0, 0])).toThrow(RangeError);
  });

  it("adds two coins: 1, 2, 1 of 4", () => {
    expect([...gridSum(coin, coin).chances]).toEqual([0.25, 0.5, 0.25]);
    expect(() => gridSum(coin, gridOf(2, [1]))).toThrow(RangeError);
  });

  it("adds two Poisson counts to the Poisson count of both means", () => {
    const sum = gridSum(poisson(2), poisson(3.5));
    for (const count of [0, 3, 6, 12]) {
      expect(sum.chances[count]).toBeCloseTo(poissonProbability(count, 5.5), 12);
    }
  });

  it("mixes distributions of different length by their chances", () => {
    const mixed = gridMixture([
      { chance: 0.25, grid: gridOf(1, [1]) },
      { chance: 0.75, grid: gridOf(1, [0, 0, 1]) },
    ]);
    expect([...mixed.chances]).toEqual([0.25, 0, 0.75]);
    expect(gridMean(mixed)).toBe(1.5);
  });

  it("has the Poisson's quantiles, shares and shortages", () => {
    const grid = poisson(7);
    for (const level of [0.5, 0.9, 0.95, 0.99]) {
      const at = gridQuantile(grid, level);
      expect(poissonTails(at, 7).lower).toBeGreaterThanOrEqual(level);
      expect(poissonTails(at - 1, 7).lower).toBeLessThan(level);
    }
    expect(gridUpTo(grid, 9)).toBeCloseTo(poissonTails(9, 7).lower, 12);
    const shortages = gridShortages(grid);
    for (const stock of [0, 5, 10, 15]) {
      expect(shortages[stock]).toBeCloseTo(poissonExpectedShortage(stock, 7), 10);
    }
  });

  it("between the steps spreads a chance evenly over the half steps around", () => {
    const even = gridOf(2, [0, 1, 1, 1, 1]);
    // From 1 to 9 evenly: half of it lies below 5, a quarter below 3.
    expect(gridQuantileBetween(even, 0.5)).toBeCloseTo(5, 12);
    expect(gridQuantileBetween(even, 0.25)).toBeCloseTo(3, 12);
    expect(gridQuantileBetween(gridOf(2, [1]), 0.9)).toBeCloseTo(0.8, 12);
  });
});
