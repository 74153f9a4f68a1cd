import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Route } from "#lib/forecast/route";
import { BY_RECIPES, recipeRoute, usedOverCard } from "#lib/forecast/shop/recipe-route";
import { sharedRoute } from "#lib/forecast/shop/shared-route";
import { shopGround } from "#lib/forecast/shop/shop-ground";
import { supplySeries } from "#lib/forecast/shop/supply-series";
import { itemType, shopHistory, steady, supplyUse } from "./shop-history-fixture";

const WEEKS = 40;
const ground = shopGround(
  shopHistory([itemType("mug", steady(WEEKS, 20)), itemType("vase", steady(WEEKS, 5))]),
);
const typeRoutes = [0, 1].map((index) => sharedRoute(ground, index));
const routeOf = (
  used: readonly number[],
  perPiece: Record<string, number>,
  routes: readonly Route[] = typeRoutes,
) =>
  recipeRoute(
    supplySeries(supplyUse("paper", used, { perPiece: new Map(Object.entries(perPiece)) }), ground),
    {
      ground,
      typeRoutes: routes,
    },
  );

describe("route over item types and recipes", () => {
  it("is the expected pieces times what today's recipes take for one", () => {
    const route = routeOf(steady(WEEKS, 20 * 3 + 5 * 8), { mug: 3, vase: 8 });
    expect(route?.name).toBe(BY_RECIPES);
    for (const said of route?.forecast(3) ?? []) expect(Math.abs(said - 100)).toBeLessThan(1.5);
    expect(Math.abs((route?.forecastAfter(12, 1)[0] ?? 0) - 100)).toBeLessThan(3);
  });

  it("is none where no recipe takes the supply", () => {
    expect(routeOf(steady(WEEKS, 4), {})).toBeNull();
  });

  it("follows each item type by its own forecast, and takes one below nothing as nothing", () => {
    const saying = (value: number): Route => ({
      name: "said",
      freedom: 0,
      forecast: (steps) => new Array<number>(steps).fill(value),
      forecastAfter: (_, steps) => new Array<number>(steps).fill(value),
    });
    const used = steady(WEEKS, 20 * 3 + 5 * 8);
    expect(routeOf(used, { mug: 3, vase: 8 }, [saying(10), saying(2)])?.forecast(1)[0]).toBeCloseTo(46, 9);
    expect(routeOf(used, { mug: 3, vase: 8 }, [saying(10), saying(-2)])?.forecast(1)[0]).toBeCloseTo(30, 9);
  });

  it("counts a supply's weeks from its first use on, and the item types' from the shop's first", () => {
    const late = [...steady(30, 0), ...steady(10, 60)];
    const route = routeOf(late, { mug: 3 });
    // After 4 weeks of the supply the shop has had 34.
    const [mugs = Number.NaN] = typeRoutes[0]?.forecastAfter(34, 1) ?? [];
    expect(route?.forecastAfter(4, 1)[0]).toBeCloseTo(3 * mugs, 6);
  });
});

describe("how much is used for what the recipes say", () => {
  it("is 1 without a week, and where it is as they say", () => {
    expect(usedOverCard([], [])).toBe(1);
    expect(usedOverCard([0, 0], [0, 0])).toBe(1);
    expect(usedOverCard(steady(9, 7), steady(9, 7))).toBeCloseTo(1, 12);
  });

  it("learns within about ten weeks that twice as much is used, and believes it in the end", () => {
    const ratioAfter = (weeks: number) => usedOverCard(steady(weeks, 6), steady(weeks, 3));
    expect(ratioAfter(1)).toBeLessThan(1.2);
    expect(ratioAfter(10)).toBeGreaterThan(1.6);
    expect(ratioAfter(26)).toBeGreaterThan(1.9);
    expect(ratioAfter(104)).toBeGreaterThan(1.99);
  });

  it("forgets how it was before: half of a change after ten weeks, nine tenths after a half year and more", () => {
    const ratioAfter = (weeks: number) =>
      usedOverCard([...steady(60, 3), ...steady(weeks, 6)], steady(60 + weeks, 3));
    expect(ratioAfter(10)).toBeGreaterThan(1.5);
    expect(ratioAfter(32)).toBeGreaterThan(1.9);
  });

  it("lies between 1 and what was used over what the recipes say", () => {
    const weeks = fc.array(fc.integer({ min: 1, max: 50 }), { minLength: 1, maxLength: 40 });
    fc.assert(
      fc.property(weeks, fc.double({ min: 0.1, max: 4, noNaN: true }), (card, times) => {
        const found = usedOverCard(
          card.map((each) => times * each),
          card,
        );
        expect(found).toBeGreaterThanOrEqual(Math.min(1, times) - 1e-9);
        expect(found).toBeLessThanOrEqual(Math.max(1, times) + 1e-9);
      }),
    );
  });
});
