import { describe, expect, it } from "vitest";
import { chosenForecast } from "#lib/forecast/chosen-forecast";
import { meanRoute, ownRoutes, type Route, SEVERAL_METHODS } from "#lib/forecast/route";
import { countSeries } from "./seeded-counts";

const flat = (name: string, value: number, freedom: number): Route => ({
  name,
  freedom,
  forecast: (steps) => new Array<number>(steps).fill(value),
  forecastAfter: (count, steps) => new Array<number>(steps).fill(value * count),
});

describe("mean of some routes", () => {
  it("says the mean of what they say, now and looking back, and takes the mean of what they take", () => {
    const both = meanRoute("both", [flat("one", 4, 1), flat("other", 10, 4)]);
    expect(both.name).toBe("both");
    expect(both.freedom).toBe(2.5);
    expect(both.forecast(2)).toEqual([7, 7]);
    expect(both.forecastAfter(3, 1)).toEqual([21]);
  });

  it("refuses no routes", () => {
    expect(() => meanRoute("none", [])).toThrow(RangeError);
  });
});

describe("routes from a series' own history", () => {
  it("are the methods that it allows, best first, behind the mean of the nearest", () => {
    const values = countSeries(3, { weeks: 40, mean: 8 });
    const series = { values, seasonLength: 1 };
    const routes = ownRoutes(series, 3);
    const { members, runnersUp, forecast } = chosenForecast(series, 3);
    expect(members.length).toBeGreaterThan(1);
    expect(routes.map(({ name }) => name)).toEqual([
      SEVERAL_METHODS,
      ...[...members, ...runnersUp].map(({ name }) => name),
    ]);
    expect(routes[0]?.forecast(3)).toEqual(forecast(3));
    expect(routes.slice(1).map(({ freedom }) => freedom)).toEqual(
      [...members, ...runnersUp].map(({ freedom }) => freedom),
    );
  });

  it("say the only value there is where the history has no more", () => {
    const routes = ownRoutes({ values: [5], seasonLength: 1 }, 3);
    expect(routes.length).toBeGreaterThan(0);
    for (const route of routes) expect(route.forecast(1)[0]).toBeCloseTo(5, 9);
  });

  it("look back from the fifth week on without failing, however long their windows", () => {
    const values = countSeries(8, { weeks: 30, mean: 3 });
    for (const route of ownRoutes({ values, seasonLength: 1 }, 3)) {
      for (const count of [4, 5, 12, 30]) {
        for (const value of route.forecastAfter(count, 13)) expect(value, route.name).not.toBeNaN();
      }
    }
  });

  it("refuse a series without a value", () => {
    expect(() => ownRoutes({ values: [], seasonLength: 1 }, 3)).toThrow(RangeError);
  });
});
