import { describe, expect, it } from "vitest";
import { croston } from "#lib/forecast/methods/croston";
import { itemTypeForecasts } from "#lib/forecast/shop/item-type-forecast";
import { shopGround } from "#lib/forecast/shop/shop-ground";
import { sumQuantile } from "#lib/forecast/sum-spread";
import { countSeries } from "../seeded-counts";
import { dyingSeries, itemType, shopHistory, steady } from "./shop-history-fixture";

const forecastsOf = (types: Parameters<typeof shopHistory>[0]) =>
  itemTypeForecasts(shopGround(shopHistory(types)), 0.95);
const WEEKS = 40;
const mug = itemType("mug", countSeries(1, { weeks: WEEKS, mean: 8 }), { massGrams: 300 });
const plate = itemType("plate", countSeries(2, { weeks: WEEKS, mean: 20 }), { massGrams: 900 });
/** Not there until so many weeks ago, then about ten a week. */
const cup = (weeks: number) =>
  itemType("cup", [...steady(WEEKS - weeks, 0), ...countSeries(3, { weeks: 30, mean: 10 }).slice(0, weeks)], {
    massGrams: 320,
  });
const cupAfter = (weeks: number) => {
  const coming = forecastsOf([mug, plate, cup(weeks)])[2]?.coming;
  if (coming === undefined) throw new Error("the cup has a forecast");
  return { ...coming, next: coming.path.perWeek[0] ?? Number.NaN };
};

describe("forecast of item types", () => {
  it("is one an item type, in order, with the weeks since it was first sold", () => {
    const found = forecastsOf([mug, cup(15), plate]);
    expect(found.map(({ id }) => id)).toEqual(["mug", "cup", "plate"]);
    expect(found.map(({ coming }) => coming.weeksSeen)).toEqual([WEEKS, 15, WEEKS]);
    expect(found.map(({ coming }) => coming.guessedShare)).toEqual([0, 0, 0]);
    for (const { past } of found) expect(past.horizonWeeks).toBe(3);
  });

  it("lets a new one start from the item type of nearest mass, and says so", () => {
    const { likeId, guessedShare, method, next } = cupAfter(2);
    expect({ likeId, guessedShare, method }).toEqual({
      likeId: "mug",
      guessedShare: 0.5,
      method: "like another item type",
    });
    expect(next).toBeGreaterThan(6);
    expect(next).toBeLessThan(12);
  });

  it("goes on near its own pieces when it is no longer new", () => {
    expect(cupAfter(8).method).toBe("like another item type");
    for (const weeks of [9, 10, 12, 16, 20]) {
      const grown = itemType("cup", [...steady(WEEKS - weeks, 0), ...steady(weeks, 10)], { massGrams: 320 });
      const coming = forecastsOf([mug, plate, grown])[2]?.coming;
      expect(coming?.likeId).toBeNull();
      expect(Math.abs((coming?.path.perWeek[0] ?? 0) - 10), `after ${weeks} weeks`).toBeLessThan(2.5);
    }
  });

  it("does not take the weeks before a new item type came for forecasts that went wrong", () => {
    // Sums of three weeks, about 30 expected: as wide as a few looks make it, not without bounds.
    for (const weeks of [1, 3, 5, 8, 9, 12]) {
      const { spread, next } = cupAfter(weeks);
      const sum = { mean: 3 * next, weeks: 3 };
      expect(sumQuantile(spread, sum, 0.95), `after ${weeks} weeks`).toBeGreaterThan(sum.mean);
      expect(sumQuantile(spread, sum, 0.95), `after ${weeks} weeks`).toBeLessThan(6 * sum.mean);
      expect(spread.dispersions[2], `after ${weeks} weeks`).toBeLessThan(3);
    }
  });

  it("lets a launch take little of what the others are expected to sell", () => {
    const before = forecastsOf([mug, plate, cup(0)])[1]?.coming.path.perWeek[0] ?? Number.NaN;
    const launched = itemType("cup", [...steady(WEEKS - 1, 0), 30], { massGrams: 320 });
    const after = forecastsOf([mug, plate, launched])[1]?.coming.path.perWeek[0] ?? Number.NaN;
    expect(Math.abs(after / before - 1)).toBeLessThan(0.2);
  });

  it("is hardly moved by item types that nobody ever bought", () => {
    const unsold = Array.from({ length: 10 }, (_, index) => itemType(`unsold ${index}`, steady(WEEKS, 0)));
    const wild = itemType(
      "plate",
      plate.pieces.map((each, week) => (week % 9 < 4 ? 3 * each : each)),
    );
    const [, alone] = forecastsOf([mug, wild]);
    const [, among] = forecastsOf([mug, wild, ...unsold]);
    expect(alone?.coming.spread.dispersions[0]).toBeGreaterThan(0.05);
    for (const [step, k = Number.NaN] of (alone?.coming.spread.dispersions ?? []).entries()) {
      expect(Math.abs((among?.coming.spread.dispersions[step] ?? 0) / k - 1)).toBeLessThan(0.15);
    }
    expect(forecastsOf([mug, ...unsold])[1]?.coming.path.perWeek[0]).toBeLessThan(0.1);
  });

  it("lets a dying item type die: under a tenth of what size over interval says after 38 silent weeks", () => {
    const values = dyingSeries(1);
    const others = itemType("mug", countSeries(9, { weeks: values.length, mean: 10 }));
    const found = forecastsOf([others, itemType("dying", values)])[1];
    const [stays = 0] = croston.fixed({ values, seasonLength: 1 }, { alpha: 0.1 }).forecast(1);
    expect(found?.coming.path.perWeek[0]).toBeLessThan(stays / 10);
  });

  it("spreads more where pieces go many at once", () => {
    const sixes = itemType("mug", mug.pieces, { piecesAtOnce: 6 });
    expect(forecastsOf([sixes, plate])[0]?.coming.spread.perUse).toBe(6);
  });
});
