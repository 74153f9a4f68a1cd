import { format } from "date-fns";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addDays, day } from "#lib/units/day";
import { formatDay, formatDayLong } from "#lib/units/day-text";

describe("formatDay", () => {
  it("shows weekday, day and month", () => {
    expect(formatDay(day("2026-11-27"), { weekday: true })).toBe("Fri 27 Nov");
  });

  it("shows day and month alone", () => {
    expect(formatDay(day("2026-11-07"))).toBe("7 Nov");
  });

  it("shows the year where asked", () => {
    expect(formatDay(day("2026-11-27"), { year: true })).toBe("27 Nov 2026");
  });
});

describe("formatDayLong", () => {
  it("shows the day in full", () => {
    expect(formatDayLong(day("2026-11-25"))).toBe("Wednesday 25 November");
  });

  it("agrees with date-fns", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 20_000 }), (count) => {
        const of = addDays(day("2000-01-01"), count);
        const date = new Date(`${of}T12:00:00`);
        expect(formatDayLong(of)).toBe(format(date, "EEEE d MMMM"));
        expect(formatDay(of, { weekday: true, year: true })).toBe(format(date, "EEE d MMM yyyy"));
      }),
    );
  });
});
