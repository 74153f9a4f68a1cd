import { addDays as addLocalDays, differenceInCalendarDays, format, getISODay, startOfWeek } from "date-fns";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addDays, day, daysBetween, isDay, maxDay, minDay, weekday, weekStart } from "#lib/units/day";

/** The same day as date-fns sees it: local noon, where no clock change can move it to another day. */
const localNoon = (text: string) => new Date(`${text}T12:00:00`);
const textOf = (date: Date) => format(date, "yyyy-MM-dd");
const days = fc
  .integer({ min: -20_000, max: 40_000 })
  .map((count) => day(textOf(addLocalDays(localNoon("1970-01-01"), count))));

describe("day", () => {
  it("keeps the text of a day", () => {
    expect(day("2026-11-25")).toBe("2026-11-25");
  });

  it.each(["2026-02-30", "2026-13-01", "2026-1-1", "25 Nov 2026", "", "2025-02-29", "2026-11-25T00:00:00Z"])(
    "refuses %j",
    (text) => {
      expect(isDay(text)).toBe(false);
      expect(() => day(text)).toThrow(RangeError);
    },
  );

  it("knows the leap day", () => {
    expect(isDay("2028-02-29")).toBe(true);
  });
});

describe("addDays", () => {
  it("passes into the next year", () => {
    expect(addDays(day("2026-12-31"), 1)).toBe("2027-01-01");
  });

  it("refuses part of a day", () => {
    expect(() => addDays(day("2026-12-31"), 0.5)).toThrow("addDays requires whole days, got 0.5");
  });

  it("refuses to leave the calendar", () => {
    expect(() => addDays(day("9999-12-31"), 1)).toThrow(RangeError);
    expect(() => addDays(day("9999-12-31"), 1e15)).toThrow(RangeError);
  });

  it("agrees with date-fns", () => {
    fc.assert(
      fc.property(days, fc.integer({ min: -3000, max: 3000 }), (from, count) => {
        expect(addDays(from, count)).toBe(textOf(addLocalDays(localNoon(from), count)));
      }),
    );
  });
});

describe("daysBetween", () => {
  it("counts two weeks", () => {
    expect(daysBetween(day("2026-11-25"), day("2026-12-09"))).toBe(14);
  });

  it("agrees with date-fns", () => {
    fc.assert(
      fc.property(days, days, (from, to) => {
        expect(daysBetween(from, to)).toBe(differenceInCalendarDays(localNoon(to), localNoon(from)));
      }),
    );
  });
});

describe("weekday", () => {
  it("is 3 on a Wednesday", () => {
    expect(weekday(day("2026-11-25"))).toBe(3);
  });

  it("agrees with date-fns", () => {
    fc.assert(
      fc.property(days, (of) => {
        expect(weekday(of)).toBe(getISODay(localNoon(of)));
      }),
    );
  });
});

describe("weekStart", () => {
  it("is the Monday before", () => {
    expect(weekStart(day("2026-11-25"), 1)).toBe("2026-11-23");
  });

  it("is the day itself on the first day", () => {
    expect(weekStart(day("2026-11-25"), 3)).toBe("2026-11-25");
  });

  it.each([0, 8, 1.5])("refuses the first day %s", (first) => {
    expect(() => weekStart(day("2026-11-25"), first)).toThrow(RangeError);
  });

  it("agrees with date-fns for each first day", () => {
    const firsts = fc.constantFrom(1, 2, 3, 4, 5, 6, 7);
    fc.assert(
      fc.property(days, firsts, (of, first) => {
        const weekStartsOn = (first % 7) as 0 | 1 | 2 | 3 | 4 | 5 | 6;
        expect(weekStart(of, first)).toBe(textOf(startOfWeek(localNoon(of), { weekStartsOn })));
      }),
    );
  });
});

describe("the later and the earlier of two days", () => {
  it("do not depend on the order given", () => {
    const [first, second] = [day("2026-11-25"), day("2026-11-26")];
    expect([maxDay(first, second), maxDay(second, first)]).toEqual([second, second]);
    expect([minDay(first, second), minDay(second, first)]).toEqual([first, first]);
  });
});
