import { describe, expect, it } from "vitest";
import type { RunFigures } from "#lib/replenishment/simulation/run-figures";
import { trialDifference, trialFigures } from "#lib/replenishment/trial/trial-figures";
import { evenRandom } from "#lib/statistics/even-random";

const run = (changes: Partial<RunFigures> = {}): RunFigures => ({
  cycles: 4,
  shortCycles: 1,
  need: 100,
  unmet: 10,
  daysOutOfStock: 3,
  orders: 2,
  deliveryCost: 1_600,
  goodsCost: 9_500,
  ordered: 200,
  meanValue: 4_000,
  peakValue: 8_000,
  meanLitres: 0,
  peakLitres: 0,
  endValue: 0,
  meanOwedValue: 0,
  ...changes,
});
const costs = { unitValue: 50, keepingShare: 0.1, orderCost: 100 };

describe("the figures of a setting", () => {
  it("add up what a setting can change of the cost, by hand", () => {
    // 200 pieces at 50 are 10,000: 500 saved by the price. 1,600 + 2 x 100 + 10 % of 4,000 - 500.
    const figures = trialFigures([run(), run()], costs);
    expect(figures.priceGap).toEqual({ mean: -500, standardError: 0 });
    expect(figures.cost).toEqual({ mean: 1_700, standardError: 0 });
    expect(figures.cycleService?.mean).toBe(0.75);
    expect(figures.filledShare?.mean).toBe(0.9);
  });

  it("know no service where no cycle ended and nothing was needed", () => {
    const empty = run({ cycles: 0, shortCycles: 0, need: 0, unmet: 0 });
    expect(trialFigures([empty], costs)).toMatchObject({ cycleService: null, filledShare: null });
    expect(trialDifference([empty], [run()], costs)).toMatchObject({ cycleService: null, filledShare: null });
  });
});

describe("the difference of two settings", () => {
  it("is taken run by run, so that luck which both share is no error", () => {
    const present = [10, 20, 60].map((daysOutOfStock) => run({ daysOutOfStock }));
    const tried = [11, 21, 61].map((daysOutOfStock) => run({ daysOutOfStock }));
    expect(trialFigures(present, costs).daysOut.standardError).toBeGreaterThan(10);
    expect(trialDifference(present, tried, costs).daysOut).toEqual({ mean: 1, standardError: 0 });
  });

  it("of a share has the error that it shows when it is drawn again and again", () => {
    const random = evenRandom(11);
    const missed = (need: number, chance: number) =>
      Array.from({ length: need }, () => (random() < chance ? 1 : 0)).reduce<number>(
        (sum, one) => sum + one,
        0,
      );
    const drawn = Array.from({ length: 400 }, () => {
      const needs = Array.from({ length: 30 }, () => 10 + Math.floor(20 * random()));
      const [present, tried] = [0.1, 0.2].map((chance) =>
        needs.map((need) => run({ need, unmet: missed(need, chance) })),
      );
      return trialDifference(present ?? [], tried ?? [], costs).filledShare ?? { mean: 0, standardError: 0 };
    });
    const means = drawn.map(({ mean }) => mean);
    const usual = means.reduce((sum, each) => sum + each, 0) / means.length;
    const deviation = Math.sqrt(
      means.reduce((sum, each) => sum + (each - usual) ** 2, 0) / (means.length - 1),
    );
    const said = drawn.reduce((sum, { standardError }) => sum + standardError, 0) / drawn.length;
    expect(usual).toBeCloseTo(-0.1, 2);
    // A deviation of 400 draws is known to 1 / sqrt(800), 3.5 %.
    expect(Math.abs(said / deviation - 1)).toBeLessThan(0.12);
  });
});
