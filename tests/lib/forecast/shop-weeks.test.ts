import { describe, expect, it } from "vitest";
import { closedCalendar } from "#lib/forecast/open-days";
import { shopWeeks } from "#lib/forecast/shop-weeks";
import { day } from "#lib/units/day";

const today = day("2026-11-25");
const starts = (firstDay: string, weekStartsOn = 1) =>
  shopWeeks({ firstDay: day(firstDay), today, weekStartsOn, calendar: [] }).map((week) => week.weekStart);

describe("weeks of the shop", () => {
  it("run from the first week to the last full one; the unfinished week is left out", () => {
    expect(starts("2026-11-09")).toEqual(["2026-11-09", "2026-11-16"]);
  });

  it("leave out a first week that the records cover only in part", () => {
    expect(starts("2026-11-04")).toEqual(["2026-11-09", "2026-11-16"]);
  });

  it("keep a first part week when there is no other", () => {
    expect(shopWeeks({ firstDay: day("2026-11-18"), today, weekStartsOn: 1, calendar: [] })).toMatchObject([
      { weekStart: "2026-11-16", partial: true },
    ]);
  });

  it("start on the shop's weekday", () => {
    expect(starts("2026-11-08", 7)).toEqual(["2026-11-08", "2026-11-15"]);
  });

  it("are none without records, or with records that begin later", () => {
    expect(shopWeeks({ firstDay: null, today, weekStartsOn: 1, calendar: [] })).toEqual([]);
    expect(starts("2026-11-26")).toEqual([]);
  });

  it("are closed when more than half of their days are", () => {
    const closedDays = (toDay: string) =>
      shopWeeks({
        firstDay: day("2026-11-16"),
        today,
        weekStartsOn: 1,
        calendar: closedCalendar([{ fromDay: day("2026-11-16"), toDay: day(toDay) }]),
      }).map((week) => week.closed);
    expect(closedDays("2026-11-18")).toEqual([false]);
    expect(closedDays("2026-11-19")).toEqual([true]);
  });
});
