import { describe, expect, it } from "vitest";
import { sumGrid } from "#lib/forecast/sum-grid";
import { undershoot } from "#lib/replenishment/undershoot";
import { gridMean, gridOf } from "#lib/statistics/grid-distribution";

/** How far below the point stock is seen in a long row of uses, with orders of 40. */
function seenBelow(uses: readonly number[]): number[] {
  const seen: number[] = [];
  let above = 40;
  for (const use of uses) {
    above -= use;
    if (above > 0) continue;
    seen.push(-above);
    above += 40;
  }
  return seen;
}

describe("undershoot", () => {
  it("of two a check is none or one, as often", () => {
    expect([...undershoot(gridOf(1, [0, 0, 1]), true).chances]).toEqual([0.5, 0.5, 0]);
  });

  it("has the mean E[D (D - 1)] / (2 E[D]) of whole pieces", () => {
    // Poisson with mean 5: 25 / 10. Negative binomial with mean 5, variance 15: (15 + 25 - 5) / 10.
    const poisson = sumGrid({ perUse: 1, dispersions: [0], whole: true }, { mean: 5, weeks: 1 }, 1);
    const batchy = sumGrid({ perUse: 1, dispersions: [0.4], whole: true }, { mean: 5, weeks: 1 }, 1);
    expect(gridMean(undershoot(poisson, true))).toBeCloseTo(2.5, 8);
    expect(gridMean(undershoot(batchy, true))).toBeCloseTo(3.5, 4);
  });

  it("has the mean E[D²] / (2 E[D]) of amounts", () => {
    // Mean 10, deviation 6: (36 + 100) / 20 = 6.8.
    const use = sumGrid({ perUse: 0, dispersions: [0.36], whole: false }, { mean: 10, weeks: 1 }, 0.05);
    expect(gridMean(undershoot(use, false))).toBeCloseTo(6.8, 2);
  });

  it("is none where nothing is used", () => {
    expect([...undershoot(gridOf(1, [1]), true).chances]).toEqual([1]);
  });

  it("is what a long row of orders shows", () => {
    // One, three or eight used, in an order without a pattern: chances of 0.5, 0.3 and 0.2.
    let state = 7;
    const uses = Array.from({ length: 200_000 }, () => {
      state = (state * 48_271) % 2_147_483_647;
      const draw = state / 2_147_483_647;
      if (draw < 0.5) return 1;
      return draw < 0.8 ? 3 : 8;
    });
    const seen = seenBelow(uses);
    const expected = undershoot(gridOf(1, [0, 0.5, 0, 0.3, 0, 0, 0, 0, 0.2]), true);
    for (const [below, chance] of expected.chances.entries()) {
      const share = seen.filter((each) => each === below).length / seen.length;
      expect(Math.abs(share - chance)).toBeLessThan(0.02);
    }
  });
});
