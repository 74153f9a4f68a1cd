import { describe, expect, it } from "vitest";
import { naive } from "#lib/forecast/methods/naive";
import type { OpenWeek } from "#lib/forecast/shop/open-weeks";
import { saidSums } from "#lib/forecast/shop/said-sums";
import { sumDispersions, sumLooks } from "#lib/forecast/sum-looks";
import { sumQuantile } from "#lib/forecast/sum-spread";
import { countSeries } from "../seeded-counts";
import { fullWeeks, steady, weeksAgo } from "./shop-history-fixture";

const POOLED = steady(4, 0.1);
const weeksOf = (count: number): OpenWeek[] =>
  fullWeeks(count).map(({ weekStart, nextWeekStart }, index) => ({
    index,
    weekStart,
    nextWeekStart,
    openShare: 1,
  }));
/** What would have been said by the newest week, with the weeks' factors. */
const said = (
  values: readonly number[],
  factors: readonly number[] = steady(values.length, 1),
  horizon = 2,
) => {
  const route = naive.fitted({ values, seasonLength: 1 });
  const looks = sumLooks(route, values, { firstOrigin: 4, steps: POOLED.length });
  const spread = {
    perUse: 1,
    whole: true,
    dispersions: sumDispersions({ looks, perUse: 1, pooled: POOLED }),
  };
  return saidSums({
    looks,
    spread,
    pooled: POOLED,
    horizon,
    chance: 0.95,
    weeks: weeksOf(values.length),
    factors,
  });
};

describe("what would have been said of past sums", () => {
  it("is said from each past week on, for whole sums only", () => {
    const sums = said([5, 5, 5, 5, 8, 6, 7]);
    expect(sums.map(({ from }) => from)).toEqual([weeksAgo(3), weeksAgo(2)]);
    expect(sums.map(({ expected }) => expected)).toEqual([10, 16]);
    expect(sums.map(({ actual }) => actual)).toEqual([14, 13]);
  });

  it("is in real weeks: season, events and open days are put back into both", () => {
    // As usual 10 a week; the sixth week had an event of 100 % more, the seventh three open days of six.
    const factors = [1, 1, 1, 1, 1, 2, 0.5];
    const [first, second] = said(steady(7, 10), factors);
    expect([first?.expected, first?.actual]).toEqual([10 + 20, 10 + 20]);
    expect([second?.expected, second?.actual]).toEqual([20 + 5, 20 + 5]);
  });

  it("has a band around what was expected, and says what would have been enough", () => {
    for (const { expected, low, high, enough } of said(countSeries(3, { weeks: 40, mean: 9 }))) {
      expect(low).toBeLessThanOrEqual(expected);
      expect(high).toBeGreaterThanOrEqual(expected);
      expect(enough).toBeGreaterThanOrEqual(high);
    }
  });

  it("takes the band from what was known then: later weeks change no earlier one", () => {
    const values = countSeries(4, { weeks: 40, mean: 9 });
    const changed = [...values.slice(0, 25), ...steady(15, 90)];
    const [before, after] = [said(values), said(changed)];
    // What was said before week 25 was seen: from the looks at 4 to 25 weeks seen.
    const bandOf = ({ expected, low, high, enough }: (typeof before)[number]) => [
      expected,
      low,
      high,
      enough,
    ];
    expect(before.slice(0, 22).map(bandOf)).toEqual(after.slice(0, 22).map(bandOf));
    expect(before.slice(26).map(bandOf)).not.toEqual(after.slice(26).map(bandOf));
  });

  it("starts with the band that all series show, while nothing of its own was over", () => {
    const [first] = said(countSeries(5, { weeks: 20, mean: 9 }));
    const start = {
      perUse: 1,
      whole: true,
      dispersions: sumDispersions({ looks: [], perUse: 1, pooled: POOLED }),
    };
    const sum = { mean: first?.expected ?? Number.NaN, weeks: 2 };
    expect(first?.low).toBe(sumQuantile(start, sum, 0.1));
    expect(first?.enough).toBe(sumQuantile(start, sum, 0.95));
  });

  it("holds about eight of ten sums of steady chance in its band", () => {
    let inside = 0;
    let all = 0;
    for (let seed = 1; seed <= 20; seed += 1) {
      for (const { low, high, actual } of said(countSeries(seed, { weeks: 50, mean: 12 }), undefined, 1)) {
        all += 1;
        if (low <= actual && actual <= high) inside += 1;
      }
    }
    expect(inside / all).toBeGreaterThan(0.75);
    expect(inside / all).toBeLessThan(0.95);
  });

  it("is nothing where no sum is over", () => {
    expect(said([3, 4, 5, 6, 7])).toEqual([]);
  });
});
