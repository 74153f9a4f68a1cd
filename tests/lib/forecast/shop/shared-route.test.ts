import { describe, expect, it } from "vitest";
import { sharedRoute } from "#lib/forecast/shop/shared-route";
import { shopGround } from "#lib/forecast/shop/shop-ground";
import { countSeries } from "../seeded-counts";
import { itemType, shopHistory, steady } from "./shop-history-fixture";

const rates = [12, 5, 2, 0.3];
const ground = shopGround(
  shopHistory(
    rates.map((mean, index) => itemType(`type ${index}`, countSeries(index + 1, { weeks: 40, mean }))),
  ),
);
const total = (said: readonly number[][], step: number) =>
  said.reduce((sum, each) => sum + (each[step] ?? Number.NaN), 0);

describe("route by the shop's level and an item type's share", () => {
  it("gives item types that add up to the level, now and after any number of weeks", () => {
    const routes = rates.map((_, index) => sharedRoute(ground, index));
    const now = routes.map((route) => route.forecast(3));
    for (const step of [0, 1, 2]) expect(total(now, step)).toBeCloseTo(ground.levelAfter(40).level, 9);
    for (const count of [4, 9, 33]) {
      const then = routes.map((route) => route.forecastAfter(count, 2));
      expect(total(then, 1)).toBeCloseTo(ground.levelAfter(count).level, 9);
    }
  });

  it("says the same for each coming week, near to what an item type sells", () => {
    const [first, second] = sharedRoute(ground, 0).forecast(2);
    expect(first).toBe(second);
    expect(Math.abs((first ?? 0) - 12)).toBeLessThan(4);
  });

  it("knows nothing of the weeks to come when it looks back", () => {
    const jump = [...steady(20, 5), ...steady(20, 50)];
    const jumped = shopGround(shopHistory([itemType("mug", jump), itemType("vase", steady(40, 5))]));
    expect(sharedRoute(jumped, 0).forecastAfter(20, 1)[0]).toBeCloseTo(5, 6);
    expect(sharedRoute(jumped, 0).forecast(1)[0]).toBeGreaterThan(35);
  });
});
