import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  closedCalendar,
  dayAfterOpenDays,
  lastOpenDay,
  nextOpenDay,
  openDays,
} from "#lib/forecast/open-days";
import { addDays, day } from "#lib/units/day";

const christmas = closedCalendar([{ fromDay: day("2026-12-24"), toDay: day("2027-01-03") }]);
const start = day("2026-11-25");
const spans = fc.array(
  fc.record({ from: fc.integer({ min: 0, max: 80 }), length: fc.integer({ min: 0, max: 15 }) }),
  { maxLength: 5 },
);
const calendarOf = (list: readonly { from: number; length: number }[]) =>
  closedCalendar(
    list.map(({ from, length }) => ({ fromDay: addDays(start, from), toDay: addDays(start, from + length) })),
  );

describe("closed calendar", () => {
  it("joins spans that meet or overlap, in any order", () => {
    const joined = closedCalendar([
      { fromDay: day("2026-12-25"), toDay: day("2026-12-28") },
      { fromDay: day("2026-12-24"), toDay: day("2026-12-24") },
      { fromDay: day("2027-02-01"), toDay: day("2027-02-02") },
    ]);
    expect(joined).toEqual([
      { fromDay: "2026-12-24", toDay: "2026-12-28" },
      { fromDay: "2027-02-01", toDay: "2027-02-02" },
    ]);
  });

  it("refuses a span that ends before it starts", () => {
    expect(() => closedCalendar([{ fromDay: day("2026-12-25"), toDay: day("2026-12-24") }])).toThrow(
      RangeError,
    );
  });
});

describe("open days", () => {
  it("counts the days outside the closure, the last day left out", () => {
    expect(openDays(day("2026-12-21"), day("2027-01-06"), christmas)).toBe(5);
    expect(openDays(day("2026-12-21"), day("2026-12-28"), [])).toBe(7);
  });

  it("finds the day after so many open days", () => {
    expect(dayAfterOpenDays(day("2026-12-21"), 3, christmas)).toBe("2026-12-24");
    expect(dayAfterOpenDays(day("2026-12-21"), 4, christmas)).toBe("2027-01-05");
  });

  it("moves off a closed day, ahead or back", () => {
    expect(nextOpenDay(day("2026-12-30"), christmas)).toBe("2027-01-04");
    expect(lastOpenDay(day("2026-12-30"), christmas)).toBe("2026-12-23");
    expect(nextOpenDay(start, christmas)).toBe(start);
    expect(lastOpenDay(start, christmas)).toBe(start);
  });

  it("the day after n open days is the first with n of them behind it", () => {
    fc.assert(
      fc.property(spans, fc.integer({ min: 1, max: 90 }), (list, count) => {
        const calendar = calendarOf(list);
        const reached = dayAfterOpenDays(start, count, calendar);
        expect(openDays(start, reached, calendar)).toBe(count);
        expect(openDays(start, addDays(reached, -1), calendar)).toBe(count - 1);
      }),
    );
  });
});
