import { describe, expect, it } from "vitest";
import { naive } from "#lib/forecast/methods/naive";
import type { Route } from "#lib/forecast/route";
import { routeChoice } from "#lib/forecast/route-choice";
import { chosenOutlook, type OutlookQuestion } from "#lib/forecast/shop/chosen-outlook";
import { addDays } from "#lib/units/day";
import { countSeries } from "../seeded-counts";
import { fullWeeks, RUNNING_WEEK, steady, weeksAgo } from "./shop-history-fixture";

const values = countSeries(4, { weeks: 24, mean: 7 });
const seven: Route = {
  name: "seven",
  freedom: 0,
  forecast: (steps) => steady(steps, 7),
  forecastAfter: (_, steps) => steady(steps, 7),
};
const newest: Route = { name: "newest week", freedom: 0, ...naive.fitted({ values, seasonLength: 1 }) };
const question = (routes: readonly Route[]): OutlookQuestion => ({
  routes,
  values,
  horizon: 2,
  chance: 0.9,
  perUse: 1,
  whole: true,
  pooled: steady(13, 0.1),
  firstOrigin: 4,
  weeks: fullWeeks(24).map(({ weekStart, nextWeekStart }, index) => ({
    index,
    weekStart,
    nextWeekStart,
    openShare: 1,
  })),
  factors: steady(24, 2),
  coming: [0, 1, 2].map((week) => addDays(RUNNING_WEEK, 7 * week)),
  comingFactors: [1, 3, 1],
  pattern: null,
});

describe("outlook by the route that looking back favours", () => {
  it("puts the factors of the coming weeks on what the chosen route says of usual ones", () => {
    const { choice, outlook } = chosenOutlook(question([seven, newest]));
    expect(choice.route).toBe(seven);
    expect(outlook.coming.path).toEqual({ firstWeek: RUNNING_WEEK, perWeek: [7, 21, 7] });
    expect(outlook.coming).toMatchObject({ method: "seven", weeksSeen: 24, guessedShare: 0, likeId: null });
  });

  it("says what was tried and what would have been said, in weeks as they really were", () => {
    const asked = question([seven, newest]);
    const { outlook } = chosenOutlook(asked);
    const { tried, spread } = routeChoice(asked);
    expect(outlook.past.tried).toEqual(tried);
    expect(outlook.coming.spread).toEqual(spread);
    expect(outlook.past.said).toHaveLength(24 - 4 - 1);
    expect(outlook.past.said[0]).toMatchObject({ from: weeksAgo(20), expected: 2 * 14 });
    expect(outlook.past.said[0]?.actual).toBe(2 * ((values[4] ?? 0) + (values[5] ?? 0)));
  });

  it("refuses no routes", () => {
    expect(() => chosenOutlook(question([]))).toThrow(RangeError);
  });
});
