import { describe, expect, it } from "vitest";
import { closedCalendar } from "#lib/forecast/open-days";
import type { PlannedEvent } from "#lib/forecast/planned-event";
import { COMING_WEEKS, shopGround } from "#lib/forecast/shop/shop-ground";
import { addDays } from "#lib/units/day";
import { fullWeeks, itemType, RUNNING_WEEK, shopHistory, steady, weeksAgo } from "./shop-history-fixture";

// The numbers are worked out by hand: what was sold over what the week had more or less; common practice, no source.
const event = (change: Partial<PlannedEvent>): PlannedEvent => ({
  id: "market",
  name: "Market",
  fromDay: weeksAgo(2),
  toDay: addDays(weeksAgo(2), 6),
  upliftPercent: 100,
  itemTypeIds: [],
  ...change,
});
const mug = itemType("mug", [8, 6, 10, 20, 7]);
const vase = itemType("vase", [1, 0, 2, 4, 1], { massGrams: 900, piecesAtOnce: 2 });
const piecesOf = (change: Parameters<typeof shopHistory>[1]) =>
  shopGround(shopHistory([mug, vase], change)).types.map(({ pieces }) => pieces);

describe("ground of a shop's forecasts", () => {
  it("takes weeks as they are where there is no season, no event and no closed day", () => {
    const ground = shopGround(shopHistory([mug, vase]));
    expect(ground.types.map(({ pieces }) => pieces)).toEqual([mug.pieces, vase.pieces]);
    expect(ground.types.map(({ factors }) => factors)).toEqual([steady(5, 1), steady(5, 1)]);
    expect(ground.types[1]).toMatchObject({ id: "vase", massGrams: 900, piecesAtOnce: 2, firstSold: 0 });
  });

  it("counts a week with an event of 100 % more as half", () => {
    expect(piecesOf({ events: [event({})] })).toEqual([
      [8, 6, 10, 10, 7],
      [1, 0, 2, 2, 1],
    ]);
  });

  it("counts it so only for the item types that the event names", () => {
    expect(piecesOf({ events: [event({ itemTypeIds: ["vase"] })] })).toEqual([mug.pieces, [1, 0, 2, 2, 1]]);
  });

  it("doubles a coming week with an event of 100 % more, for the item types it names", () => {
    const coming = event({
      fromDay: addDays(RUNNING_WEEK, 14),
      toDay: addDays(RUNNING_WEEK, 20),
      itemTypeIds: ["mug"],
    });
    const [first, second] = shopGround(shopHistory([mug, vase], { events: [coming] })).types;
    expect(first?.comingFactors.slice(0, 4)).toEqual([1, 1, 2, 1]);
    expect(second?.comingFactors.slice(0, 4)).toEqual([1, 1, 1, 1]);
  });

  it("scales a week with four open days up to seven", () => {
    const calendar = closedCalendar([{ fromDay: weeksAgo(2), toDay: addDays(weeksAgo(2), 2) }]);
    const [pieces] = piecesOf({ calendar });
    expect(pieces?.[3]).toBeCloseTo((20 * 7) / 4, 9);
    expect(pieces?.[2]).toBe(10);
  });

  it("leaves out closed weeks, the first one where it is partial, and the running one", () => {
    const weeks = fullWeeks(5).map((week, index) => ({ ...week, closed: index === 3, partial: index === 0 }));
    const ground = shopGround(shopHistory([mug, vase], { weeks }));
    expect(ground.types.map(({ pieces }) => pieces)).toEqual([
      [6, 10, 7],
      [0, 2, 1],
    ]);
    expect(ground.types[1]?.firstSold).toBe(1);
    expect(ground.coming[0]).toBe(RUNNING_WEEK);
    expect(ground.coming).toHaveLength(COMING_WEEKS);
    expect(ground.coming[52]).toBe(addDays(RUNNING_WEEK, 364));
  });

  it("leaves out a week in which a planned event let nothing out, as a closed one", () => {
    const away = event({ upliftPercent: -100 });
    const idle = itemType("mug", [8, 6, 10, 0, 7]);
    const ground = shopGround(shopHistory([idle], { events: [away] }));
    expect(ground.types[0]?.pieces).toEqual([8, 6, 10, 7]);
    expect(ground.weeks.map(({ index }) => index)).toEqual([0, 1, 2, 4]);
  });

  it("takes a season out of the past weeks and puts it into the coming ones", () => {
    const ofYear = (weekStart: string) =>
      Math.cos(((Number(weekStart.slice(5, 7)) - 0.5) / 12) * 2 * Math.PI);
    const totals = fullWeeks(104).map(({ weekStart }) => 50 * (1 + 0.4 * ofYear(weekStart)));
    const { season, types, coming } = shopGround(shopHistory([itemType("mug", totals)]));
    expect(season.believed).toBeGreaterThan(0.9);
    const spreadOf = (values: readonly number[]) => Math.max(...values) / Math.min(...values);
    expect(spreadOf(totals)).toBeGreaterThan(2);
    expect(spreadOf(types[0]?.pieces ?? [])).toBeLessThan(1.3);
    const december = coming.findIndex((weekStart) => weekStart.slice(5, 7) === "12");
    const june = coming.findIndex((weekStart) => weekStart.slice(5, 7) === "06");
    expect(types[0]?.comingFactors[december]).toBeGreaterThan(1.2);
    expect(types[0]?.comingFactors[june]).toBeLessThan(0.8);
  });

  it("knows the level and the shares as they were after any number of weeks", () => {
    const ground = shopGround(shopHistory([itemType("mug", [6, 6, 90]), itemType("vase", [2, 2, 10])]));
    const { level, shares } = ground.levelAfter(2);
    expect(level).toBeCloseTo(8, 9);
    // 6 x 0.93 + 6 + 0.5 = 12.08 of 16.44
    expect(shares[0]).toBeCloseTo(12.08 / 16.44, 12);
    expect(ground.levelAfter(2)).toBe(ground.levelAfter(2));
    expect(ground.levelAfter(3).level).toBeGreaterThan(8);
  });

  it("refuses an item type that has not one number for each week", () => {
    const short = itemType("vase", [1, 2], { parcels: [1, 2, 3, 4, 5] });
    expect(() => shopGround(shopHistory([mug, short]))).toThrow(
      new RangeError("shopGround requires 5 weeks of vase"),
    );
    const unled = itemType("vase", [1, 2, 3, 4, 5], { parcels: [1] });
    expect(() => shopGround(shopHistory([mug, unled]))).toThrow(RangeError);
  });
});
