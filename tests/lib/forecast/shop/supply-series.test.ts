import { describe, expect, it } from "vitest";
import { closedCalendar } from "#lib/forecast/open-days";
import type { PlannedEvent } from "#lib/forecast/planned-event";
import { shopGround } from "#lib/forecast/shop/shop-ground";
import { supplySeries } from "#lib/forecast/shop/supply-series";
import { addDays } from "#lib/units/day";
import {
  fullWeeks,
  itemType,
  RUNNING_WEEK,
  shopHistory,
  steady,
  supplyUse,
  weeksAgo,
} from "./shop-history-fixture";

// The numbers are worked out by hand from the definition; common practice, no source.
const types = [itemType("mug", steady(6, 10)), itemType("vase", steady(6, 10))];
const doubled = (itemTypeIds: readonly string[], from = weeksAgo(2)): PlannedEvent => ({
  id: "market",
  name: "Market",
  fromDay: from,
  toDay: addDays(from, 6),
  upliftPercent: 100,
  itemTypeIds,
});
const paper = (perPiece: Record<string, number>, used: readonly number[] = [0, 0, 30, 40, 60, 30]) =>
  supplyUse("paper", used, { perPiece: new Map(Object.entries(perPiece)) });

describe("series of a supply's use", () => {
  it("starts with the week of the first use", () => {
    const { values, start, weeks, factors } = supplySeries(paper({ mug: 3 }), shopGround(shopHistory(types)));
    expect(values).toEqual([30, 40, 60, 30]);
    expect(start).toBe(2);
    expect(weeks.map(({ weekStart }) => weekStart)).toEqual([4, 3, 2, 1].map(weeksAgo));
    expect(factors).toEqual(steady(4, 1));
  });

  it("is empty for a supply that was never used", () => {
    const ground = shopGround(shopHistory(types));
    expect(supplySeries(paper({ mug: 3 }, steady(6, 0)), ground)).toMatchObject({
      values: [],
      start: 6,
      perUse: 1,
    });
  });

  it("takes out the events of the item types that take the supply, in proportion", () => {
    const mugs = shopGround(shopHistory(types, { events: [doubled(["mug"])] }));
    expect(supplySeries(paper({ mug: 3 }), mugs).values).toEqual([30, 40, 30, 30]);
    expect(supplySeries(paper({ vase: 3 }), mugs).values).toEqual([30, 40, 60, 30]);
    // Half of it goes into mugs: the week takes 1.5 times as much as usual.
    const [, , both] = supplySeries(paper({ mug: 3, vase: 3 }), mugs).values;
    expect(both).toBeGreaterThan(38);
    expect(both).toBeLessThan(42);
  });

  it("puts events into the coming weeks of what takes it", () => {
    const ground = shopGround(shopHistory(types, { events: [doubled(["mug"], addDays(RUNNING_WEEK, 7))] }));
    expect(supplySeries(paper({ mug: 3 }), ground).comingFactors.slice(0, 3)).toEqual([1, 2, 1]);
    expect(supplySeries(paper({ vase: 3 }), ground).comingFactors.slice(0, 3)).toEqual([1, 1, 1]);
  });

  it("leaves out closed weeks and scales up a week with four open days, in a recipe or not", () => {
    const weeks = fullWeeks(6).map((week, index) => ({ ...week, closed: index === 3 }));
    const calendar = closedCalendar([{ fromDay: weeksAgo(2), toDay: addDays(weeksAgo(2), 2) }]);
    const ground = shopGround(shopHistory(types, { weeks, calendar }));
    for (const supply of [paper({ mug: 3 }), paper({})]) {
      const { values } = supplySeries(supply, ground);
      expect(values).toHaveLength(3);
      expect(values[1]).toBeCloseTo((60 * 7) / 4, 9);
      expect(values[2]).toBe(30);
    }
  });

  it("takes one use as the mean of the weeks with use where no recipe says it", () => {
    const ground = shopGround(shopHistory(types));
    expect(supplySeries(supplyUse("tape", [0, 10, 0, 20, 0, 0]), ground).perUse).toBe(15);
    expect(supplySeries(supplyUse("tape", [0, 10, 0, 20, 0, 0], { perUse: 4 }), ground).perUse).toBe(4);
  });

  it("holds today's recipes in the order of the item types", () => {
    const ground = shopGround(shopHistory(types));
    expect(supplySeries(paper({ vase: 7 }), ground).bill).toEqual([0, 7]);
  });

  it("refuses a history without a number for each week", () => {
    const ground = shopGround(shopHistory(types));
    expect(() => supplySeries(paper({}, [1, 2, 3]), ground)).toThrow(
      new RangeError("supplySeries requires use of every week of paper"),
    );
  });
});
