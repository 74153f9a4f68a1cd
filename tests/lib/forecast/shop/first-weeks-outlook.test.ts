import { describe, expect, it } from "vitest";
import { FIRST_WEEKS, firstWeeks } from "#lib/forecast/shop/first-weeks";
import {
  FIRST_WEEKS_METHOD,
  type FirstWeeksGround,
  firstParcels,
  firstPieces,
  firstUse,
} from "#lib/forecast/shop/first-weeks-outlook";
import { shopGround } from "#lib/forecast/shop/shop-ground";
import type { ShopHistory } from "#lib/forecast/shop/shop-history";
import { sumQuantile } from "#lib/forecast/sum-spread";
import { addDays } from "#lib/units/day";
import { itemType, RUNNING_WEEK, shopHistory, steady, supplyUse } from "./shop-history-fixture";

const groundOf = (history: ShopHistory): FirstWeeksGround => {
  const ground = shopGround(history);
  const parcels = ground.weeks.map((_, place) =>
    ground.types.reduce((sum, type) => sum + (type.parcels[place] ?? 0), 0),
  );
  const belief = firstWeeks(history, parcels);
  if (belief === null) throw new Error("the shop has a guess or a record");
  return { ground, history, belief };
};
const shopOf = (weeks: number, change: Partial<ShopHistory> = { guessedParcels: 10 }) =>
  groundOf(shopHistory([itemType("mug", steady(weeks, 9)), itemType("vase", steady(weeks, 3))], change));
const next = (outlook: ReturnType<typeof firstParcels> | null | undefined) =>
  outlook?.coming.path.perWeek[0] ?? Number.NaN;
const bandOf = ({ coming: { path, spread } }: ReturnType<typeof firstParcels>) => {
  const sum = { mean: path.perWeek[0] ?? 0, weeks: 1 };
  return (sumQuantile(spread, sum, 0.9) - sumQuantile(spread, sum, 0.1)) / sum.mean;
};

const MUGS_DOUBLE = {
  id: "fair",
  name: "Fair",
  fromDay: addDays(RUNNING_WEEK, 7),
  toDay: addDays(RUNNING_WEEK, 13),
  upliftPercent: 100,
  itemTypeIds: ["mug"],
};

describe("a planned event in the first weeks", () => {
  it("raises parcels by the share of the pieces that it is for", () => {
    // Three of four pieces are mugs, give or take the piece that nobody has sold yet: (27 + 1/2) / (36 + 1).
    const [now = 0, then = 0] = firstParcels(shopOf(3, { events: [MUGS_DOUBLE] })).coming.path.perWeek;
    expect(then / now).toBeCloseTo(1 + 27.5 / 37, 12);
  });

  it("raises the use of what those pieces take, before the first full week as after it", () => {
    const paper = (weeks: number) =>
      supplyUse("paper", steady(weeks, 18), { perPiece: new Map([["mug", 2]]) });
    for (const weeks of [0, 3]) {
      const first = shopOf(weeks, { events: [MUGS_DOUBLE], guessedParcels: 10 });
      const [now = 0, then = 0] = firstUse(paper(weeks), first)?.coming.path.perWeek ?? [];
      expect(now).toBeGreaterThan(0);
      expect(then / now).toBeCloseTo(2, 12);
    }
  });
});

describe("parcels in the first weeks", () => {
  it("are the guess before the first week, and say that they are", () => {
    const outlook = firstParcels(shopOf(0));
    expect(outlook.coming.path.perWeek.slice(0, 3)).toEqual([10, 10, 10]);
    expect(outlook.coming.path.firstWeek).toBe(RUNNING_WEEK);
    expect(outlook.coming).toMatchObject({ method: FIRST_WEEKS_METHOD, weeksSeen: 0, guessedShare: 1 });
    expect(outlook.past).toEqual({ horizonWeeks: 1, tried: [], said: [], pattern: null });
  });

  it("move to the records: half of each after two weeks", () => {
    // 12 a week came, 10 were guessed.
    expect(next(firstParcels(shopOf(2)))).toBe(11);
    expect(firstParcels(shopOf(2)).coming.guessedShare).toBe(0.5);
    expect(next(firstParcels(shopOf(8)))).toBeCloseTo(11.6, 9);
  });

  it("have a band that narrows as weeks come", () => {
    const spreads = Array.from({ length: FIRST_WEEKS + 1 }, (_, weeks) => firstParcels(shopOf(weeks)));
    const first = spreads.map(({ coming }) => coming.spread.dispersions[0] ?? Number.NaN);
    expect(first).toEqual(first.toSorted((a, b) => b - a));
    expect(new Set(first).size).toBe(first.length);
    expect(bandOf(spreads[8] ?? firstParcels(shopOf(8)))).toBeLessThan(bandOf(firstParcels(shopOf(0))));
  });
});

describe("pieces in the first weeks", () => {
  it("are equal parts of the guess while nothing was sold", () => {
    const [mug, vase] = firstPieces(shopOf(0));
    expect(next(mug)).toBeCloseTo(5, 9);
    expect(next(vase)).toBeCloseTo(5, 9);
  });

  it("add up to the parcels times the pieces of one, and move to each type's share", () => {
    const first = shopOf(4, {});
    const [mug, vase] = firstPieces(first);
    expect(next(mug) + next(vase)).toBeCloseTo(next(firstParcels(first)), 9);
    // 36 of 48 pieces, and half a piece for each: 36.5 / 49
    expect(next(mug) / next(firstParcels(first))).toBeCloseTo(36.5 / 49, 9);
  });

  it("are more than the parcels where a parcel takes several", () => {
    const pairs = itemType("mug", steady(4, 12), { parcels: steady(4, 6), piecesAtOnce: 2 });
    const first = groundOf(shopHistory([pairs]));
    const [mug] = firstPieces(first);
    expect(next(mug)).toBeCloseTo(2 * next(firstParcels(first)), 9);
    expect(mug?.coming.spread.perUse).toBe(2);
  });

  it("count the first days while no week is over", () => {
    const days = (parcels: number) => ({ firstDays: { parcels, pieces: parcels } });
    const history = shopHistory([itemType("mug", [], days(5)), itemType("vase", [], days(1))], {
      firstDays: 4,
    });
    const [mug, vase] = firstPieces(groundOf(history));
    // 6 x 7 / 4 parcels a week; 5.5 and 1.5 of 7
    expect(next(mug)).toBeCloseTo(((6 * 7) / 4) * (5.5 / 7), 9);
    expect(next(vase)).toBeCloseTo(((6 * 7) / 4) * (1.5 / 7), 9);
  });

  it("double in a coming week with an event of 100 % more, only for the types named", () => {
    const events = [
      {
        id: "market",
        name: "Market",
        fromDay: addDays(RUNNING_WEEK, 7),
        toDay: addDays(RUNNING_WEEK, 13),
        upliftPercent: 100,
        itemTypeIds: ["mug"],
      },
    ];
    const [mug, vase] = firstPieces(shopOf(3, { events }));
    const timesOf = (outlook: typeof mug) => (outlook?.coming.path.perWeek[1] ?? 0) / next(outlook);
    expect(timesOf(mug)).toBeCloseTo(2, 9);
    expect(timesOf(vase)).toBeCloseTo(1, 9);
  });
});

describe("use of a supply in the first weeks", () => {
  const paper = (used: readonly number[], perPiece: Record<string, number> = { mug: 4 }) =>
    supplyUse("paper", used, { perPiece: new Map(Object.entries(perPiece)), perUse: 4 });

  it("is by the recipes and the guess alone before the first week", () => {
    const use = firstUse(paper([]), shopOf(0));
    // 5 mugs guessed, 4 sheets each
    expect(next(use)).toBeCloseTo(20, 9);
    expect(use?.coming.guessedShare).toBe(1);
  });

  it("follows the pieces and what is really used for one", () => {
    const as = next(firstUse(paper(steady(4, 36)), shopOf(4, {})));
    const twice = next(firstUse(paper(steady(4, 72)), shopOf(4, {})));
    expect(Math.abs(as - 36)).toBeLessThan(1.5);
    expect(twice / as).toBeGreaterThan(1.3);
    expect(twice / as).toBeLessThan(2);
  });

  it("is the mean of its own weeks where no recipe takes it", () => {
    expect(next(firstUse(paper([0, 30, 10, 20], {}), shopOf(4, {})))).toBe(20);
  });

  it("is the first days' use, as a week, where no week is over and no recipe takes it", () => {
    const history = shopHistory([itemType("mug", [], { firstDays: { parcels: 3, pieces: 3 } })], {
      firstDays: 3,
    });
    const use = firstUse(supplyUse("tape", [], { firstDaysUsed: 6 }), groundOf(history));
    expect(next(use)).toBeCloseTo(14, 9);
  });

  it("is none where no recipe takes it and none was used", () => {
    expect(firstUse(paper(steady(4, 0), {}), shopOf(4, {}))).toBeNull();
    expect(firstUse(paper([], {}), shopOf(0))).toBeNull();
  });
});
