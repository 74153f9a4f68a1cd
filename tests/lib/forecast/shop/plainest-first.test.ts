import { describe, expect, it } from "vitest";
import { croston } from "#lib/forecast/methods/croston";
import { patternOfUse } from "#lib/forecast/pattern-of-use";
import { firstOrigin, plainestFirst } from "#lib/forecast/shop/plainest-first";
import { countSeries } from "../seeded-counts";
import { dyingSeries } from "./shop-history-fixture";

const routesOf = (values: readonly number[]) => plainestFirst(values, patternOfUse(values), 3);
const names = (values: readonly number[]) => routesOf(values).map(({ name }) => name);

describe("routes from a series' own history", () => {
  it("start with simple smoothing and the moving average for use in most weeks, and hold all methods", () => {
    const found = names(countSeries(5, { weeks: 40, mean: 9 }));
    expect(found.slice(0, 2)).toEqual(["simple smoothing", "moving average"]);
    expect(found).toContain("damped trend");
    expect(new Set(found).size).toBe(found.length);
  });

  it("are only the methods made for it where use comes now and then", () => {
    const values = countSeries(6, { weeks: 40, mean: 0.3 });
    expect(patternOfUse(values)?.kind).toBe("intermittent");
    expect(names(values)).toEqual([
      "size and chance",
      "size over interval, less its bias",
      "mean of all weeks",
      "moving average",
    ]);
  });

  it("let a dying series die first: under a tenth of what size over interval says after 38 silent weeks", () => {
    for (const seed of [1, 2, 3, 4, 5, 6]) {
      const values = dyingSeries(seed);
      const [first] = routesOf(values);
      const [stays = 0] = croston.fixed({ values, seasonLength: 1 }, { alpha: 0.1 }).forecast(1);
      expect(first?.name).toBe("size and chance");
      expect(first?.forecast(1)[0], `seed ${seed}`).toBeLessThan(stays / 10);
    }
  });

  it("are those that a single week allows", () => {
    for (const route of routesOf([4])) expect(route.forecast(2)[1]).toBeCloseTo(4, 9);
    expect(routesOf([4]).length).toBeGreaterThan(0);
  });
});

describe("first look back", () => {
  it("is from the fifth week on, at most a year back", () => {
    expect([5, 20, 56, 57, 104].map((weeks) => firstOrigin(weeks))).toEqual([4, 4, 4, 5, 52]);
  });

  it("is from the fifth week after the first use", () => {
    expect(firstOrigin(40, 30)).toBe(34);
    expect(firstOrigin(104, 10)).toBe(52);
  });
});
