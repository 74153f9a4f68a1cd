import { describe, expect, it } from "vitest";
import { chartEvents, chartWeeks } from "#app/outlook/chart-week.ts";
import { fanTitle } from "#app/outlook/fan-title.ts";
import { markedEvents, outlookWeeks } from "#app/outlook/outlook-weeks.ts";
import { closedCalendar } from "#lib/forecast/open-days";
import type { PlannedEvent } from "#lib/forecast/planned-event";
import { addDays, day } from "#lib/units/day";

const MONDAY = day("2026-11-23");
const forecast = {
  path: { firstWeek: MONDAY, perWeek: [20, 40, 20] },
  spread: { perUse: 1, whole: true, dispersions: [0.05] },
};
const past = Array.from({ length: 30 }, (_, week) => ({
  weekStart: addDays(MONDAY, -7 * (30 - week)),
  recorded: week,
  restated: week + 1,
  closed: false,
}));
const market: PlannedEvent = {
  id: "market",
  name: "Market",
  fromDay: day("2026-12-01"),
  toDay: day("2026-12-10"),
  upliftPercent: 50,
  itemTypeIds: [],
};
const offer: PlannedEvent = { ...market, id: "offer", fromDay: day("2026-11-25"), itemTypeIds: ["mug"] };
const span = { from: day("2026-05-25"), until: addDays(MONDAY, 91) };

describe("weeks of the chart", () => {
  const events = markedEvents([market, offer], span, null);
  const calendar = closedCalendar([{ fromDay: day("2026-12-21"), toDay: day("2026-12-26") }]);
  const weeks = outlookWeeks({ forecast, past, calendar, events });

  it("are the last 26 as the forecast counts them, then 13 that are expected", () => {
    expect(weeks).toHaveLength(39);
    expect(weeks[0]).toMatchObject({ used: 5, recorded: 4, expected: null });
    expect(weeks[26]).toMatchObject({ weekStart: MONDAY, used: null, expected: { mean: 20 } });
    expect(weeks[27]?.expected?.mean).toBeCloseTo(40, 9);
  });

  it("count closed days and expect less for them", () => {
    const christmas = weeks.find(({ weekStart }) => weekStart === "2026-12-21");
    expect(christmas?.closedDays).toBe(6);
    expect(christmas?.expected?.mean).toBeCloseTo(20 / 7, 9);
    expect(chartWeeks(weeks).filter((week) => week.isClosed)).toHaveLength(1);
  });

  it("carry the letters of the events that fall into them, in order of day", () => {
    expect(events.map(({ mark, event }) => [mark, event.id])).toEqual([
      ["A", "offer"],
      ["B", "market"],
    ]);
    expect(weeks[26]?.marks).toEqual(["A"]);
    expect(weeks[27]?.marks).toEqual(["A", "B"]);
    expect(chartEvents(weeks)).toEqual([
      { mark: "A", from: "2026-11-23", to: "2026-12-07" },
      { mark: "B", from: "2026-11-30", to: "2026-12-07" },
    ]);
  });

  it("say which coming week is the highest", () => {
    expect(fanTitle(weeks, "sheet")).toBe(
      "The highest of the coming weeks is that of 30 Nov, about 40 sheets.",
    );
    const flat = outlookWeeks({
      forecast: { ...forecast, path: { firstWeek: MONDAY, perWeek: [20] } },
      past: [],
      calendar: [],
      events: [],
    });
    expect(fanTitle(flat, "sheet")).toBe("The coming weeks look alike: about 20 sheets each.");
  });
});

describe("events on the chart", () => {
  it("of an item type are those that hold for it", () => {
    expect(markedEvents([market, offer], span, "bowl").map(({ event }) => event.id)).toEqual(["market"]);
    expect(markedEvents([market, offer], span, "mug")).toHaveLength(2);
  });

  it("leave out what lies outside of the weeks shown", () => {
    expect(markedEvents([market], { from: day("2026-12-11"), until: day("2026-12-31") }, null)).toEqual([]);
    expect(markedEvents([market], { from: day("2026-11-01"), until: day("2026-12-01") }, null)).toEqual([]);
  });
});
