import { describe, expect, it } from "vitest";
import { closedCalendar } from "#lib/forecast/open-days";
import { openWeeks } from "#lib/forecast/shop/open-weeks";
import { shopWeeks } from "#lib/forecast/shop-weeks";
import { addDays } from "#lib/units/day";
import { RUNNING_WEEK, weeksAgo } from "./shop-history-fixture";

// Worked out by hand from the definition of a week that counts; common practice, no source.
const closed = (from: number, days: number) => ({
  fromDay: addDays(weeksAgo(3), from),
  toDay: addDays(weeksAgo(3), from + days - 1),
});
const weeksWith = (calendar: ReturnType<typeof closedCalendar>, firstDay = weeksAgo(5)) =>
  openWeeks(shopWeeks({ firstDay, today: addDays(RUNNING_WEEK, 3), weekStartsOn: 1, calendar }), calendar);

describe("open weeks", () => {
  it("are the full weeks that are over, the running one left out", () => {
    const weeks = weeksWith([]);
    expect(weeks.map(({ weekStart }) => weekStart)).toEqual([5, 4, 3, 2, 1].map(weeksAgo));
    expect(weeks.map(({ index }) => index)).toEqual([0, 1, 2, 3, 4]);
    for (const { openShare } of weeks) expect(openShare).toBe(1);
  });

  it("leave out a week that was closed for most of its days, and keep the places of the others", () => {
    const weeks = weeksWith(closedCalendar([closed(0, 4)]));
    expect(weeks.map(({ index }) => index)).toEqual([0, 1, 3, 4]);
    expect(weeks.map(({ weekStart }) => weekStart)).not.toContain(weeksAgo(3));
  });

  it("keep a week of four open days, as four sevenths", () => {
    const weeks = weeksWith(closedCalendar([closed(4, 3)]));
    expect(weeks).toHaveLength(5);
    expect(weeks[2]?.openShare).toBeCloseTo(4 / 7, 12);
  });

  it("leave out the first week where the records begin after its first day", () => {
    const weeks = weeksWith([], addDays(weeksAgo(5), 2));
    expect(weeks[0]?.weekStart).toBe(weeksAgo(4));
    expect(weeksWith([], addDays(weeksAgo(1), 2))).toEqual([]);
  });
});
