import { describe, expect, it } from "vitest";
import { countEquations } from "#lib/packing/learning/count-equations";
import { misreadCounts } from "#lib/packing/learning/misread-counts";
import { stepBundles } from "#lib/packing/learning/step-bundles";
import { addDays } from "#lib/units/day";
import { FIRST_DAY, shelf } from "./shelf";

const uses = [4, 7, 2, 9, 5, 6].map((times) => ({ "mug/fill": { times, units: 11 } }));
const right = [600, 556, 479, 457, 358, 303, 237];

function widened(counted: readonly number[]): { counts: number[]; uses: number[] } {
  const intervals = shelf(counted, uses);
  const equations = countEquations(intervals, stepBundles(intervals), addDays(FIRST_DAY, 42));
  const wide = misreadCounts(equations);
  const over = (after: readonly number[], before: readonly number[]) =>
    after.map((variance, at) => variance / (before[at] ?? 1));
  return {
    counts: over(wide.countVariances, equations.countVariances),
    uses: over(wide.useVariances, equations.useVariances),
  };
}

describe("misread counts", () => {
  it("leave what fits as it was", () => {
    const { counts, uses: intervals } = widened(right);
    for (const times of [...counts, ...intervals]) {
      expect(times).toBeGreaterThan(0.7);
      expect(times).toBeLessThan(1.1);
    }
  });

  it("widen the one count that was misread", () => {
    const { counts } = widened(right.with(3, 357));
    expect(counts[3]).toBeGreaterThan(10);
    expect(Math.max(...counts.toSpliced(3, 1))).toBeLessThan((counts[3] ?? 0) / 5);
  });

  it("widen the one interval in which something else went", () => {
    const { uses: intervals } = widened(right.map((units, at) => (at > 2 ? units - 90 : units)));
    expect(intervals[2]).toBeGreaterThan(5);
    expect(Math.max(...intervals.toSpliced(2, 1))).toBeLessThan((intervals[2] ?? 0) / 3);
  });
});
