import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { eventFactor, type PlannedEvent } from "#lib/forecast/planned-event";
import { addDays, day, daysBetween } from "#lib/units/day";

// The factors are worked out by hand from the definition; common practice, no source.
const monday = day("2026-11-30");
const market: PlannedEvent = {
  id: "market",
  name: "Market",
  fromDay: day("2026-12-01"),
  toDay: day("2026-12-14"),
  upliftPercent: 50,
  itemTypeIds: [],
};
const offer: PlannedEvent = {
  id: "offer",
  name: "Mugs on offer",
  fromDay: day("2026-12-07"),
  toDay: day("2026-12-08"),
  upliftPercent: 100,
  itemTypeIds: ["mug"],
};

describe("event factor", () => {
  it("is 1 without events, and where none falls on the days asked", () => {
    expect(eventFactor([], "mug", monday, addDays(monday, 7))).toBe(1);
    expect(eventFactor([market], "mug", day("2026-11-24"), day("2026-12-01"))).toBe(1);
    expect(eventFactor([market], "mug", day("2026-12-15"), day("2026-12-22"))).toBe(1);
  });

  it("counts both ends of the event, and leaves out the day at which the question ends", () => {
    expect(eventFactor([market], "mug", day("2026-12-01"), day("2026-12-02"))).toBe(1.5);
    expect(eventFactor([market], "mug", day("2026-12-14"), day("2026-12-15"))).toBe(1.5);
    expect(eventFactor([market], "mug", monday, addDays(monday, 7))).toBeCloseTo((1 + 6 * 1.5) / 7, 12);
  });

  it("holds only for the item types that the event names", () => {
    expect(eventFactor([offer], "mug", day("2026-12-07"), day("2026-12-09"))).toBe(2);
    expect(eventFactor([offer], "vase", day("2026-12-07"), day("2026-12-09"))).toBe(1);
  });

  it("multiplies two events on one day", () => {
    const week = eventFactor([market, offer], "mug", day("2026-12-07"), day("2026-12-14"));
    expect(week).toBeCloseTo((2 * 3 + 5 * 1.5) / 7, 12);
  });

  it("is 0 where nothing is sold at all", () => {
    const away = { ...market, upliftPercent: -100 };
    expect(eventFactor([away], "mug", day("2026-12-01"), day("2026-12-15"))).toBe(0);
  });

  it("refuses days that end before they begin", () => {
    expect(() => eventFactor([market], "mug", monday, monday)).toThrow(RangeError);
    expect(() => eventFactor([], "mug", monday, addDays(monday, -1))).toThrow(RangeError);
  });

  it("of two stretches is the mean of theirs, weighted by their days", () => {
    const days = fc.integer({ min: 1, max: 40 });
    const start = fc.integer({ min: -20, max: 30 });
    fc.assert(
      fc.property(start, days, days, fc.integer({ min: -100, max: 900 }), (first, one, other, percent) => {
        const from = addDays(monday, first);
        const between = addDays(from, one);
        const until = addDays(between, other);
        const events = [{ ...market, upliftPercent: percent }, offer];
        const factor = (a: typeof from, b: typeof from) =>
          eventFactor(events, "mug", a, b) * daysBetween(a, b);
        expect(factor(from, until)).toBeCloseTo(factor(from, between) + factor(between, until), 8);
      }),
    );
  });
});
