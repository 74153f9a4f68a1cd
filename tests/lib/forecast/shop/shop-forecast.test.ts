import { describe, expect, it } from "vitest";
import { FIRST_WEEKS } from "#lib/forecast/shop/first-weeks";
import { FIRST_WEEKS_METHOD } from "#lib/forecast/shop/first-weeks-outlook";
import { shopForecast } from "#lib/forecast/shop/shop-forecast";
import type { ShopHistory } from "#lib/forecast/shop/shop-history";
import type { SubjectOutlook } from "#lib/forecast/shop/subject-forecast";
import { sumQuantile } from "#lib/forecast/sum-spread";
import { countSeries } from "../seeded-counts";
import { itemType, shopHistory, steady, supplyUse } from "./shop-history-fixture";

/** Three item types by chance and two supplies, so many weeks of them. */
const shopOf = (weeks: number, { seed = 1, rate = 6 }: { seed?: number; rate?: number } = {}) => {
  const types = [1, 2, 0.2].map((times, index) =>
    itemType(`type ${index}`, countSeries(10 * seed + index, { weeks, mean: rate * times })),
  );
  const used = types[0]?.pieces.map((each) => 3 * each) ?? [];
  const supplies = [
    supplyUse("paper", used, { perPiece: new Map([["type 0", 3]]), perUse: 3 }),
    supplyUse("tape", countSeries(seed, { weeks, mean: 2 })),
  ];
  return { history: shopHistory(types), supplies };
};
const outlooksOf = ({ history, supplies }: ReturnType<typeof shopOf>): SubjectOutlook[] => {
  const { parcels, itemTypes, supply } = shopForecast(history, supplies);
  const all = [parcels, ...itemTypes.map(({ outlook }) => outlook), ...supplies.map(supply)];
  return all.filter((each) => each !== null);
};
const numbersOf = ({ coming, past }: SubjectOutlook) => [
  ...coming.path.perWeek,
  ...coming.spread.dispersions,
  ...past.said.flatMap(({ expected, low, high, enough, actual }) => [expected, low, high, enough, actual]),
];

describe("forecast of a shop", () => {
  it("is nothing without a record and a guess", () => {
    const { parcels, itemTypes, supply } = shopForecast(shopHistory([itemType("mug", [])]), []);
    expect(parcels).toBeNull();
    expect(itemTypes).toEqual([]);
    expect(supply(supplyUse("paper", []))).toBeNull();
  });

  it("starts from a belief, and looks back from the ninth full week on", () => {
    const methodsOf = (weeks: number) => outlooksOf(shopOf(weeks)).map(({ coming }) => coming.method);
    expect(new Set(methodsOf(FIRST_WEEKS))).toEqual(new Set([FIRST_WEEKS_METHOD]));
    expect(methodsOf(FIRST_WEEKS + 1)).not.toContain(FIRST_WEEKS_METHOD);
  });

  it("does not jump by more than its band from the eighth to the ninth week of steady trade", () => {
    for (let seed = 1; seed <= 10; seed += 1) {
      const pieces = countSeries(seed, { weeks: 9, mean: 12 });
      const shop = (weeks: number): ShopHistory =>
        shopHistory([itemType("mug", pieces.slice(0, weeks))], { guessedParcels: 12 });
      const [before, after] = [8, 9].map((weeks) => shopForecast(shop(weeks), []));
      for (const [early, late] of [
        [before?.parcels, after?.parcels],
        [before?.itemTypes[0]?.outlook, after?.itemTypes[0]?.outlook],
      ]) {
        const sum = { mean: early?.coming.path.perWeek[0] ?? Number.NaN, weeks: 1 };
        const spread = early?.coming.spread ?? { perUse: 1, dispersions: [], whole: true };
        const next = late?.coming.path.perWeek[0] ?? Number.NaN;
        expect(next, `seed ${seed}`).toBeGreaterThanOrEqual(sumQuantile(spread, sum, 0.1));
        expect(next, `seed ${seed}`).toBeLessThanOrEqual(sumQuantile(spread, sum, 0.9));
      }
    }
  });

  it("has finite numbers from 0, for shops of any age, busy and quiet", () => {
    for (const weeks of [0, 1, 5, 8, 9, 10, 13, 23, 47]) {
      for (const rate of [0, 0.2, 3]) {
        for (const number of outlooksOf(shopOf(weeks, { seed: weeks + 1, rate })).flatMap(numbersOf)) {
          expect(Number.isFinite(number) && number >= 0, `${weeks} weeks of ${rate}: ${number}`).toBe(true);
        }
      }
    }
  });

  it("says what nearly nothing before a use makes of the band, and does not fail", () => {
    const quiet = [
      [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 0, 1, 0, 0, 0, 0, 0, 0, 1, 0, 1, 0, 1],
      [0, 1, 0, 0, 0, 0, 0, 0, 0, 1, 0, 0, 0, 1, 1, 2, 2, 0, 0, 0, 0, 0, 0],
      [0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1, 1, 0, 0, 0, 2, 2, 0, 1],
    ].map((pieces, index) => itemType(`type ${index}`, pieces));
    for (const { outlook } of shopForecast(shopHistory(quiet), []).itemTypes) {
      expect(outlook.past.said.length).toBeGreaterThan(0);
      for (const { low, high } of outlook.past.said) expect(high).toBeGreaterThanOrEqual(low);
    }
  });

  it("gives the same for the same", () => {
    for (const weeks of [5, 30]) expect(outlooksOf(shopOf(weeks))).toEqual(outlooksOf(shopOf(weeks)));
  });

  it("refuses histories of the wrong length, of item types and of supplies", () => {
    const types = [itemType("mug", steady(12, 4)), itemType("vase", steady(11, 4))];
    expect(() => shopForecast(shopHistory(types), [])).toThrow(
      new RangeError("shopGround requires 12 weeks of vase"),
    );
    for (const weeks of [11, 13]) {
      const paper = supplyUse("paper", steady(weeks, 4));
      expect(() => shopForecast(shopHistory([itemType("mug", steady(12, 4))]), [paper])).toThrow(
        new RangeError("shopForecast requires 12 weeks of paper"),
      );
    }
  });
});
