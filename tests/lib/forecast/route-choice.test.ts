import { describe, expect, it } from "vitest";
import { naive } from "#lib/forecast/methods/naive";
import { patternOfUse } from "#lib/forecast/pattern-of-use";
import type { Route } from "#lib/forecast/route";
import { type RouteQuestion, routeChoice } from "#lib/forecast/route-choice";
import { firstOrigin, plainestFirst } from "#lib/forecast/shop/plainest-first";
import { sumQuantile } from "#lib/forecast/sum-spread";
import { pinballLoss } from "#lib/statistics/pinball-loss";
import { countSeries, seeded } from "./seeded-counts";

const flat = (name: string, value: number, freedom = 1): Route => ({
  name,
  freedom,
  forecast: (steps) => new Array<number>(steps).fill(value),
  forecastAfter: (_, steps) => new Array<number>(steps).fill(value),
});
const newestWeek = (values: readonly number[]): Route => ({
  name: "newest week",
  freedom: 0,
  ...naive.fitted({ values, seasonLength: 1 }),
});
const question = (values: readonly number[], routes: readonly Route[]): RouteQuestion => ({
  routes,
  values,
  horizon: 3,
  chance: 0.95,
  perUse: 1,
  whole: true,
  pooled: new Array<number>(6).fill(0.01),
  firstOrigin: firstOrigin(values.length),
});
const names = (routes: readonly { readonly name: string }[]) => routes.map(({ name }) => name);
const ownChoice = (values: readonly number[]) => {
  const routes = plainestFirst(values, patternOfUse(values), 3);
  return { plainest: routes[0], choice: routeChoice(question(values, routes)) };
};

describe("choice of a route", () => {
  it("takes the first of routes that say the same", () => {
    const values = countSeries(1, { weeks: 40, mean: 10 });
    for (const freedoms of [[1, 1] as const, [2, 0] as const]) {
      const [one, other] = [flat("one", 10, freedoms[0]), flat("other", 10, freedoms[1])];
      expect(routeChoice(question(values, [one, other])).route).toBe(one);
      expect(routeChoice(question(values, [other, one])).route).toBe(other);
    }
  });

  it("takes a route that is clearly better, wherever it stands", () => {
    const values = countSeries(2, { weeks: 40, mean: 20 });
    const right = flat("right", 20);
    const high = flat("far too high", 50);
    for (const routes of [
      [high, right],
      [right, high],
    ]) {
      const { route, tried } = routeChoice(question(values, routes));
      expect(route).toBe(right);
      expect(names(tried)).toEqual(["right", "far too high"]);
    }
  });

  it("takes what follows a series that rises or has risen, not the mean of all its weeks", () => {
    for (const seed of [1, 2, 3, 4, 5]) {
      const { count } = seeded(seed);
      const values = Array.from({ length: 60 }, (_, week) => count(week < 36 ? 10 : 30));
      const { choice } = ownChoice(values);
      expect(choice.route.name).not.toBe("mean of all weeks");
      expect(choice.route.forecast(1)[0]).toBeGreaterThan(24);
    }
  });

  it("is moved by noise alone in fewer than a tenth of the series", () => {
    let plainest = 0;
    let all = 0;
    for (const mean of [1, 3, 6, 20]) {
      for (let seed = 1; seed <= 12; seed += 1) {
        const found = ownChoice(countSeries(31 * seed + mean, { weeks: 60, mean }));
        if (found.choice.route === found.plainest) plainest += 1;
        all += 1;
      }
    }
    expect(plainest / all).toBeGreaterThanOrEqual(0.9);
  });

  it("takes the plainest where fewer than two sums were seen, and says that none was", () => {
    const values = [3, 9, 4, 8, 5, 7, 6];
    const { route, tried } = routeChoice(question(values, [flat("plain", 2), flat("near", 6)]));
    expect(route.name).toBe("plain");
    expect(tried.map(({ looks }) => looks)).toEqual([1, 1]);
    const short = routeChoice(question([3, 9, 4, 8, 5], [flat("plain", 2), flat("near", 6)]));
    expect(short.tried.map(({ pinball, looks }) => [pinball, looks])).toEqual([
      [null, 0],
      [null, 0],
    ]);
  });

  it("lists what was tried, the least pinball loss first", () => {
    const { choice } = ownChoice(countSeries(7, { weeks: 50, mean: 6 }));
    const losses = choice.tried.map(({ pinball }) => pinball ?? Number.NaN);
    expect(losses.length).toBeGreaterThan(3);
    expect(losses).toEqual(losses.toSorted((a, b) => a - b));
    expect(names(choice.tried)).toContain(choice.route.name);
  });

  it("judges by the mean pinball loss of the quantile of the sum, raised by what the fit took", () => {
    const values = countSeries(4, { weeks: 20, mean: 5 });
    const { spread, looks, tried } = routeChoice(question(values, [flat("five", 5, 2)]));
    const losses = looks
      .filter(({ actual }) => actual.length >= 3)
      .map(({ actual }) =>
        pinballLoss(sumQuantile(spread, { mean: 15, weeks: 3 }, 0.95), actual[2] ?? Number.NaN, 0.95),
      );
    const mean = losses.reduce((sum, loss) => sum + loss, 0) / losses.length;
    expect(losses).toHaveLength(14);
    // sqrt((20 + 2) / (20 - 2))
    expect(tried[0]?.pinball).toBeCloseTo(mean * Math.sqrt(22 / 18), 9);
  });

  it("refuses no routes", () => {
    expect(() => routeChoice(question([1, 2, 3], []))).toThrow(
      new RangeError("routeChoice requires a route, got none"),
    );
  });
});

// Hyndman and Koehler (2006), Another look at measures of forecast accuracy, International Journal of Forecasting 22:
// the error over that of the newest value (MASE) (from memory).
describe("scaled error", () => {
  const scaledOf = (values: readonly number[]) =>
    routeChoice(question(values, [newestWeek(values)])).tried[0]?.scaledError ?? Number.NaN;

  it("of the newest week as the forecast is about 1 by itself", () => {
    for (const seed of [1, 2, 3, 4, 5]) {
      const found = scaledOf(countSeries(seed, { weeks: 56, mean: 12 }));
      expect(found).toBeGreaterThan(0.9);
      expect(found).toBeLessThan(1.1);
    }
  });

  it("is the mean absolute error of a step over the mean change from week to week", () => {
    // Changes 2, 4, 2, 4, 2: mean 2.8. From the fifth week on 5 is said: errors 3 (of 2) and 1 (of 4).
    const values = [4, 6, 2, 4, 0, 2].map((value) => value + 2);
    const { tried } = routeChoice(question(values, [flat("five", 5)]));
    expect(tried[0]?.scaledError).toBeCloseTo(2 / 2.8, 12);
  });

  it("is unknown where nothing ever changed", () => {
    const values = new Array<number>(12).fill(7);
    expect(routeChoice(question(values, [flat("seven", 7)])).tried[0]?.scaledError).toBeNull();
  });
});
