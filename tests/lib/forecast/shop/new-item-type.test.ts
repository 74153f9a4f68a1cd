import { describe, expect, it } from "vitest";
import { newItemType } from "#lib/forecast/shop/new-item-type";
import { shopGround } from "#lib/forecast/shop/shop-ground";
import { itemType, shopHistory, steady } from "./shop-history-fixture";

const WEEKS = 40;
const old = [
  itemType("mug", steady(WEEKS, 8), { massGrams: 300 }),
  itemType("plate", steady(WEEKS, 20), { massGrams: 900 }),
  itemType("bowl", steady(WEEKS, 3), { massGrams: 500 }),
];
/** The old types and one that sells `rate` a week since so many weeks. */
const groundWith = (weeks: number, rate: number, massGrams: number | null = 320) =>
  shopGround(
    shopHistory([
      ...old,
      itemType("cup", [...steady(WEEKS - weeks, 0), ...steady(weeks, rate)], { massGrams }),
    ]),
  );
const cupOf = (weeks: number, rate: number, massGrams: number | null = 320) =>
  newItemType(groundWith(weeks, rate, massGrams), 3);

describe("new item type in an older shop", () => {
  it("starts from the item type of nearest mass", () => {
    expect(cupOf(2, 4)?.likeId).toBe("mug");
    expect(cupOf(2, 4, 850)?.likeId).toBe("plate");
    // In proportion: 400 g is 1.33 times 300 g and 0.8 of 500 g.
    expect(cupOf(2, 4, 400)?.likeId).toBe("bowl");
  });

  it("starts from the item type in the middle of the trade where its mass is unknown", () => {
    expect(cupOf(2, 4, null)?.likeId).toBe("mug");
  });

  it("moves to its own pieces: two weeks of the other's rate and its own weeks", () => {
    const guessed = [1, 2, 4, 8].map((weeks) => cupOf(weeks, 8)?.guessedShare);
    expect(guessed).toEqual([2 / 3, 1 / 2, 1 / 3, 1 / 5]);
    const said = [1, 2, 4, 8].map((weeks) => cupOf(weeks, 40)?.route.forecast(1)[0] ?? Number.NaN);
    expect(said).toEqual(said.toSorted((a, b) => a - b));
    // (2 x about 8 + 8 x 40) / 10; the shop's level follows the new item type in part.
    expect(Math.abs((said[3] ?? 0) - 33.6)).toBeLessThan(1.5);
  });

  it("stays near a like one's rate where it sells as much", () => {
    for (const weeks of [1, 3, 8]) {
      const [said = Number.NaN] = cupOf(weeks, 8)?.route.forecast(1) ?? [];
      expect(Math.abs(said - 8)).toBeLessThan(1);
    }
  });

  it("says when it looks back what its own weeks said until then", () => {
    const route = cupOf(6, 8)?.route;
    const [then = Number.NaN] = route?.forecastAfter(WEEKS - 3, 1) ?? [];
    const [now = Number.NaN] = route?.forecast(1) ?? [];
    expect(route?.forecastAfter(WEEKS, 1)[0]).toBe(now);
    expect(route?.forecastAfter(WEEKS - 6, 1)).toEqual([0]);
    expect(Math.abs(then - 8)).toBeLessThan(1);
  });

  it("is none after more than eight weeks, before the first piece, and where nothing is older", () => {
    expect(cupOf(9, 8)).toBeNull();
    expect(cupOf(8, 8)).not.toBeNull();
    expect(newItemType(groundWith(0, 0), 3)).toBeNull();
    const young = shopGround(shopHistory([itemType("mug", steady(6, 8)), itemType("cup", steady(6, 3))]));
    expect(newItemType(young, 1)).toBeNull();
  });
});
