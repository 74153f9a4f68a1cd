import { describe, expect, it } from "vitest";
import { sumGrid, sumReach } from "#lib/forecast/sum-grid";
import { type SumSpread, sumQuantile, sumUpTo, sumVariance } from "#lib/forecast/sum-spread";
import { gridMean, gridQuantile, gridQuantileBetween, gridUpTo } from "#lib/statistics/grid-distribution";

const pieces: SumSpread = { perUse: 1, dispersions: [0.4, 0.3], whole: true };
const sheets: SumSpread = { perUse: 9, dispersions: [0.06], whole: false };
const week = (mean: number) => ({ mean, weeks: 1 });

describe("a sum on a grid", () => {
  it("has the quantiles of whole pieces", () => {
    for (const mean of [0.3, 4, 37]) {
      const grid = sumGrid(pieces, week(mean), 1);
      expect(gridMean(grid) / mean).toBeCloseTo(1, 4);
      for (const level of [0.5, 0.9, 0.98]) {
        expect(gridQuantile(grid, level)).toBe(sumQuantile(pieces, week(mean), level));
      }
    }
  });

  it("has the mean, the variance and, within a step, the quantiles of amounts", () => {
    for (const mean of [2, 90, 1270]) {
      const sum = week(mean);
      const step = sumReach(sheets, sum) / 400;
      const grid = sumGrid(sheets, sum, step);
      const gridVariance = grid.chances.reduce(
        (all, chance, at) => all + chance * (at * step - mean) ** 2,
        0,
      );
      expect(gridMean(grid) / mean).toBeCloseTo(1, 2);
      expect(gridVariance / sumVariance(sheets, sum)).toBeCloseTo(1, 1);
      for (const level of [0.9, 0.95, 0.98]) {
        const found = gridQuantileBetween(grid, level);
        expect(Math.abs(found - sumQuantile(sheets, sum, level))).toBeLessThan(step);
      }
    }
  });

  it("is the amount itself where there is no spread, and none where nothing is expected", () => {
    const sure = { perUse: 0, dispersions: [0], whole: false };
    expect(gridUpTo(sumGrid(sure, week(21), 0.5), 20.5)).toBe(0);
    expect(gridUpTo(sumGrid(sure, week(21), 0.5), 21)).toBe(1);
    expect(gridMean(sumGrid(sure, week(21), 0.4))).toBeCloseTo(21, 12);
    expect([...sumGrid(sure, week(0), 1).chances]).toEqual([1]);
  });
});

describe("the chance that a sum does not exceed an amount", () => {
  it("is the level at its own quantile", () => {
    for (const level of [0.2, 0.9, 0.98]) {
      expect(sumUpTo(sheets, week(90), sumQuantile(sheets, week(90), level))).toBeCloseTo(level, 8);
      const count = sumQuantile(pieces, week(4), level);
      expect(sumUpTo(pieces, week(4), count)).toBeGreaterThanOrEqual(level);
      expect(sumUpTo(pieces, week(4), count - 1)).toBeLessThan(level);
    }
  });

  it("is 0 below nothing, and 1 where nothing is expected", () => {
    expect(sumUpTo(sheets, week(90), -1)).toBe(0);
    expect(sumUpTo(sheets, week(0), 0)).toBe(1);
  });
});
