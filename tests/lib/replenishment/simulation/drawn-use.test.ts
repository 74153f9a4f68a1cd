import { describe, expect, it } from "vitest";
import { type SumSpread, sumVariance } from "#lib/forecast/sum-spread";
import { drawnUse } from "#lib/replenishment/simulation/drawn-use";
import { meanEstimate } from "#lib/replenishment/simulation/estimate";
import { evenRandom } from "#lib/statistics/even-random";
import { negativeBinomialTails } from "#lib/statistics/negative-binomial";
import { addDays } from "#lib/units/day";
import { FIRST_DAY } from "./one-supply-shop";

const RUNS = 20_000;
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

/** Sums over the first weeks of many runs. */
function sumsOf(spread: SumSpread, perWeek: readonly number[], weeks: number): number[] {
  const draw = drawnUse(
    { path: { firstWeek: FIRST_DAY, perWeek }, spread },
    { firstDay: FIRST_DAY, days: 7 * weeks },
    [],
  );
  const random = evenRandom(weeks);
  return Array.from({ length: RUNS }, () => sum(draw(random)));
}

describe("drawn use", () => {
  const spreads: [string, SumSpread][] = [
    ["whole pieces", { perUse: 1, dispersions: [0.3, 0.22, 0.18, 0.16], whole: true }],
    ["whole pieces, several a parcel", { perUse: 3, dispersions: [0.3, 0.22, 0.18, 0.16], whole: true }],
    ["amounts", { perUse: 2.5, dispersions: [0.3, 0.22, 0.18, 0.16], whole: false }],
    ["all weeks off alike", { perUse: 1, dispersions: [0.1, 0.1, 0.1, 0.1], whole: true }],
    ["by chance alone", { perUse: 1, dispersions: [0], whole: true }],
  ];

  // Both ends of the spread are exact; between them k falls with 1 / weeks, which the spread need not.
  it.each(spreads)("has the mean and the variance of the spread over one week and four: %s", (_, spread) => {
    for (const weeks of [1, 4]) {
      const sums = sumsOf(spread, [14], weeks);
      const mean = meanEstimate(sums);
      expect(Math.abs(mean.mean - 14 * weeks)).toBeLessThan(3.5 * mean.standardError);
      const squares = meanEstimate(sums.map((value) => (value - 14 * weeks) ** 2));
      const wanted = sumVariance(spread, { mean: 14 * weeks, weeks });
      expect(Math.abs(squares.mean - wanted)).toBeLessThan(3.5 * squares.standardError);
      expect(squares.standardError).toBeLessThan(0.05 * wanted);
    }
  });

  it("is a negative binomial count a week", () => {
    const spread: SumSpread = { perUse: 1, dispersions: [0.5], whole: true };
    const sums = sumsOf(spread, [6], 1);
    for (const count of [0, 2, 5, 10, 20]) {
      const share = negativeBinomialTails(count, { mean: 6, size: 2 }).lower;
      const found = sums.filter((value) => value <= count).length / RUNS;
      expect(Math.abs(found - share)).toBeLessThan(3.5 * Math.sqrt((share * (1 - share)) / RUNS));
    }
  });

  it("follows the path by the day, nothing on closed days, whole where pieces are", () => {
    const draw = drawnUse(
      {
        path: { firstWeek: FIRST_DAY, perWeek: [70, 7000] },
        spread: { perUse: 1, dispersions: [0], whole: true },
      },
      { firstDay: addDays(FIRST_DAY, 5), days: 4 },
      [{ fromDay: addDays(FIRST_DAY, 6), toDay: addDays(FIRST_DAY, 6) }],
    );
    const days = draw(evenRandom(1));
    expect(days).toHaveLength(4);
    expect(days[1]).toBe(0);
    expect(days[0]).toBeLessThan(40);
    expect(Math.min(days[2] ?? 0, days[3] ?? 0)).toBeGreaterThan(800);
    expect(days.every(Number.isInteger)).toBe(true);
  });

  it("changes its weekly part with the week of the path, not of the first day", () => {
    const draw = drawnUse(
      {
        path: { firstWeek: FIRST_DAY, perWeek: [7] },
        spread: { perUse: 0, dispersions: [0.9, 0.45], whole: false },
      },
      { firstDay: addDays(FIRST_DAY, 5), days: 4 },
      [],
    );
    const [saturday, sunday, monday, tuesday] = draw(evenRandom(1));
    expect(sunday).toBe(saturday);
    expect(monday).not.toBe(sunday);
    expect(tuesday).toBe(monday);
  });

  it("refuses days before the path", () => {
    const forecast = {
      path: { firstWeek: FIRST_DAY, perWeek: [7] },
      spread: { perUse: 1, dispersions: [0], whole: true },
    };
    expect(() => drawnUse(forecast, { firstDay: addDays(FIRST_DAY, -1), days: 1 }, [])).toThrow(RangeError);
  });
});
