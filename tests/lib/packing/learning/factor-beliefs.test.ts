import { describe, expect, it } from "vitest";
import { countEquations } from "#lib/packing/learning/count-equations";
import { factorBeliefs } from "#lib/packing/learning/factor-beliefs";
import { stepBundles } from "#lib/packing/learning/step-bundles";
import { addDays } from "#lib/units/day";
import { FIRST_DAY, trueShelf, type Uses } from "./shelf";

const weeks: readonly Uses[] = [
  [6, 1],
  [2, 7],
  [9, 2],
  [1, 5],
  [7, 7],
  [3, 0],
  [0, 8],
  [8, 4],
].map(([mugs = 0, vases = 0]) => ({
  "mug/fill": { times: mugs, units: 11 },
  "vase/fill": { times: vases, units: 14 },
}));

function beliefs(
  factors: Readonly<Record<string, number>>,
  saidRight: readonly number[] = [0, 0],
  past = -1,
) {
  const intervals = trueShelf(weeks, factors);
  const views = factorBeliefs(
    countEquations(intervals, stepBundles(intervals), addDays(FIRST_DAY, 56)),
    saidRight.map((said, at) => ({ saidRight: said, isPast: at === past })),
  );
  const mean = (at: number) => views.reduce((sum, view) => sum + view.weight * (view.means[at] ?? 0), 0);
  return { views, means: [mean(0), mean(1)] as const };
}

describe("beliefs about factors", () => {
  it("have weights that add up to 1 and covariances of their own size", () => {
    const { views } = beliefs({ "mug/fill": 1.2 });
    expect(views.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 12);
    for (const { means, covariance } of views) {
      expect(means).toHaveLength(2);
      expect(covariance[0]?.[1]).toBeCloseTo(covariance[1]?.[0] ?? Number.NaN, 12);
      expect(covariance[0]?.[0]).toBeGreaterThan(0);
    }
  });

  it("stay at the card where the card is right", () => {
    const { means } = beliefs({});
    expect(means[0]).toBeCloseTo(1, 2);
    expect(means[1]).toBeCloseTo(1, 2);
  });

  it("part a step that takes more from one that does not", () => {
    const { means } = beliefs({ "mug/fill": 1.3 });
    expect(means[0]).toBeGreaterThan(1.2);
    expect(means[1]).toBeLessThan(1.08);
  });

  it("follow a supply that is carded far off", () => {
    const { means } = beliefs({ "mug/fill": 2.5, "vase/fill": 2.5 });
    expect(means[0]).toBeCloseTo(2.5, 0);
    expect(means[1]).toBeCloseTo(2.5, 0);
  });

  it("take nothing from a card of the past for those of today", () => {
    const views = (past: number) => beliefs({ "mug/fill": 1.6, "vase/fill": 1 }, [0, 0], past).means[1];
    expect(Math.abs(views(0) - 1)).toBeLessThan(Math.abs(views(-1) - 1));
    expect(beliefs({ "mug/fill": 1.6 }, [0, 0], 0).means[0]).toBeCloseTo(1.6, 1);
  });

  it("move less where the seller said that the card is right", () => {
    const free = beliefs({ "mug/fill": 1.2 }).means[0];
    const said = beliefs({ "mug/fill": 1.2 }, [100, 0]).means[0];
    const saidTwice = beliefs({ "mug/fill": 1.2 }, [200, 0]).means[0];
    expect(said).toBeLessThan(free);
    expect(saidTwice).toBeLessThan(said);
  });
});
