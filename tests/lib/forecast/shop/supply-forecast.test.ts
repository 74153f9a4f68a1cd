import { describe, expect, it } from "vitest";
import { itemTypeForecasts } from "#lib/forecast/shop/item-type-forecast";
import { BY_RECIPES } from "#lib/forecast/shop/recipe-route";
import { shopGround } from "#lib/forecast/shop/shop-ground";
import type { SupplyUseHistory } from "#lib/forecast/shop/shop-history";
import { supplyForecast, supplyGround, WEEKS_WITHOUT_USE } from "#lib/forecast/shop/supply-forecast";
import { countSeries } from "../seeded-counts";
import { itemType, shopHistory, steady, supplyUse } from "./shop-history-fixture";

const WEEKS = 40;
const mugs = countSeries(1, { weeks: WEEKS, mean: 20 });
const ground = shopGround(
  shopHistory([itemType("mug", mugs), itemType("vase", countSeries(2, { weeks: WEEKS, mean: 4 }))]),
);
const typeRoutes = itemTypeForecasts(ground, 0.95).map(({ route }) => route);
const groundFor = (supplies: readonly SupplyUseHistory[]) =>
  supplyGround(supplies, { ground, typeRoutes, serviceLevel: 0.95 });
const forecastOf = (supply: SupplyUseHistory) => supplyForecast(supply, groundFor([supply]));
const inMugs = (id: string, used: readonly number[], each: number) =>
  supplyUse(id, used, { perPiece: new Map([["mug", each]]), perUse: each });
const next = (supply: SupplyUseHistory) => forecastOf(supply)?.coming.path.perWeek[0] ?? Number.NaN;
const nextMugs = typeRoutes[0]?.forecast(1)[0] ?? Number.NaN;

describe("forecast of a supply's use", () => {
  it("goes by the item types and today's recipes where use is as they say", () => {
    const paper = inMugs(
      "paper",
      mugs.map((each) => 11 * each),
      11,
    );
    const found = forecastOf(paper);
    expect(found?.coming.method).toBe(BY_RECIPES);
    expect(found?.coming.path.perWeek[0]).toBeCloseTo(11 * nextMugs, 6);
    expect(found?.coming).toMatchObject({ weeksSeen: WEEKS, guessedShare: 0 });
    expect(found?.coming.spread).toMatchObject({ perUse: 11, whole: false });
  });

  it("follows a switch of the recipe at once: paper instead of bubble", () => {
    // Use as it would have been by today's recipes: all in paper, none in bubble.
    expect(
      next(
        inMugs(
          "paper",
          mugs.map((each) => 11 * each),
          11,
        ),
      ),
    ).toBeCloseTo(11 * nextMugs, 6);
    expect(forecastOf(supplyUse("bubble", steady(WEEKS, 0)))).toBeNull();
  });

  it("expects what a new recipe takes of a supply that was never used", () => {
    expect(next(inMugs("corrugate", steady(WEEKS, 0), 2))).toBeCloseTo(2 * nextMugs, 6);
  });

  it("learns within about ten weeks that twice as much is used as the recipes say", () => {
    const short = shopGround(shopHistory([itemType("mug", mugs.slice(-10))]));
    const routes = itemTypeForecasts(short, 0.95).map(({ route }) => route);
    const paper = inMugs(
      "paper",
      mugs.slice(-10).map((each) => 6 * each),
      3,
    );
    const question = supplyGround([paper], { ground: short, typeRoutes: routes, serviceLevel: 0.95 });
    const found = supplyForecast(paper, question)?.coming.path.perWeek[0] ?? Number.NaN;
    expect(found / (6 * (routes[0]?.forecast(1)[0] ?? Number.NaN))).toBeGreaterThan(0.8);
    expect(
      next(
        inMugs(
          "paper",
          mugs.map((each) => 6 * each),
          3,
        ),
      ) /
        (6 * nextMugs),
    ).toBeGreaterThan(0.95);
  });

  it("goes by its own history where no recipe takes it", () => {
    const used = countSeries(7, { weeks: WEEKS, mean: 15 });
    const found = forecastOf(supplyUse("tape", used));
    expect(found?.past.tried.map(({ name }) => name)).not.toContain(BY_RECIPES);
    expect(found?.coming.path.perWeek[0]).toBeGreaterThan(11);
    expect(found?.coming.path.perWeek[0]).toBeLessThan(19);
  });

  it("is none for a supply in no recipe that was not used for 26 weeks, and one where it was", () => {
    const used = (silent: number) => [...steady(WEEKS - silent, 8), ...steady(silent, 0)];
    expect(forecastOf(supplyUse("straw", used(WEEKS_WITHOUT_USE)))).toBeNull();
    expect(forecastOf(supplyUse("straw", used(WEEKS_WITHOUT_USE - 1)))).not.toBeNull();
    expect(forecastOf(inMugs("straw", used(WEEKS_WITHOUT_USE), 2))).not.toBeNull();
  });

  it("looks back on the sum of the weeks that the stock must last, at most thirteen", () => {
    const used = mugs.map((each) => 3 * each);
    for (const [horizonWeeks, wanted] of [
      [1, 1],
      [5, 5],
      [30, 13],
    ] as const) {
      const found = forecastOf({ ...inMugs("paper", used, 3), horizonWeeks });
      expect(found?.past.horizonWeeks).toBe(wanted);
      expect(found?.past.said).toHaveLength(WEEKS - 4 - wanted + 1);
    }
  });

  it("counts whole pieces as such", () => {
    expect(forecastOf({ ...inMugs("carton", mugs, 1), whole: true })?.coming.spread.whole).toBe(true);
  });
});

describe("what all supplies show of how far off forecasts by recipes are", () => {
  it("is little where use follows the recipes, much where it does not", () => {
    const as = inMugs(
      "paper",
      mugs.map((each) => 3 * each),
      3,
    );
    const wild = inMugs(
      "fill",
      mugs.map((each, week) => (week % 7 < 3 ? 9 * each : 0)),
      3,
    );
    const [good = Number.NaN] = groundFor([as]).pooled;
    const [bad = Number.NaN] = groundFor([wild]).pooled;
    expect(good).toBeLessThan(0.05);
    expect(bad).toBeGreaterThan(0.5);
    expect(groundFor([as, wild]).pooled[0]).toBeCloseTo((good + bad) / 2, 9);
  });

  it("is a guess where no recipe takes any", () => {
    // 0.1 + 0.2 / step
    expect(groundFor([supplyUse("tape", mugs)]).pooled.slice(0, 2)).toEqual([0.30000000000000004, 0.2]);
  });
});
