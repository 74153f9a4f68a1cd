import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addDays, day } from "#lib/units/day";
import { endOfDay, instant, instantOfTime, shopDay, startOfDay } from "#lib/units/instant";

const FIRST_ZONE = "Pacific/Kiritimati";
const LAST_ZONE = "Pacific/Pago_Pago";

describe("instant", () => {
  it("keeps UTC text with milliseconds", () => {
    expect(instant("2026-11-25T10:30:00.000Z")).toBe("2026-11-25T10:30:00.000Z");
  });

  it.each(["2026-11-25", "2026-11-25T10:30:00Z", "2026-11-25T10:30:00.000+02:00", "now", ""])(
    "refuses %j",
    (text) => {
      expect(() => instant(text)).toThrow(RangeError);
    },
  );

  it("counts milliseconds from 1970", () => {
    expect(instantOfTime(0)).toBe("1970-01-01T00:00:00.000Z");
  });

  it("refuses a time outside the calendar", () => {
    expect(() => instantOfTime(Number.NaN)).toThrow(RangeError);
  });
});

describe("shopDay", () => {
  it("is two days apart in the first and the last time zone", () => {
    const at = instant("2026-11-25T10:30:00.000Z");
    expect([shopDay(at, FIRST_ZONE), shopDay(at, LAST_ZONE)]).toEqual(["2026-11-26", "2026-11-24"]);
  });

  it("refuses a time zone that does not exist", () => {
    expect(() => shopDay(instantOfTime(0), "Sea/Bottom")).toThrow(RangeError);
  });
});

describe("the bounds of a day", () => {
  it("lie 14 hours ahead of UTC in the first time zone", () => {
    expect(startOfDay(day("2026-11-26"), FIRST_ZONE)).toBe("2026-11-25T10:00:00.000Z");
    expect(endOfDay(day("2026-11-26"), FIRST_ZONE)).toBe("2026-11-26T09:59:59.999Z");
  });

  it("lie 11 hours behind UTC in the last time zone", () => {
    expect(startOfDay(day("2026-11-26"), LAST_ZONE)).toBe("2026-11-26T11:00:00.000Z");
    expect(endOfDay(day("2026-11-26"), LAST_ZONE)).toBe("2026-11-27T10:59:59.999Z");
  });

  it("make a day of 23 hours when clocks go forward (Paris, 29 March 2026)", () => {
    expect(startOfDay(day("2026-03-29"), "Europe/Paris")).toBe("2026-03-28T23:00:00.000Z");
    expect(endOfDay(day("2026-03-29"), "Europe/Paris")).toBe("2026-03-29T21:59:59.999Z");
  });

  it("start at one in the morning where midnight is skipped (São Paulo, 4 November 2018)", () => {
    expect(startOfDay(day("2018-11-04"), "America/Sao_Paulo")).toBe("2018-11-04T03:00:00.000Z");
  });

  it("leave no room in a day that a zone skipped (Apia, 30 December 2011)", () => {
    const skipped = day("2011-12-30");
    expect(startOfDay(skipped, "Pacific/Apia")).toBe(startOfDay(addDays(skipped, 1), "Pacific/Apia"));
  });

  const zones = fc.constantFrom(
    FIRST_ZONE,
    LAST_ZONE,
    "Europe/Paris",
    "America/New_York",
    "Australia/Lord_Howe",
  );
  const days = fc.integer({ min: 0, max: 12_000 }).map((count) => addDays(day("2000-01-01"), count));

  it("hold the first and the last millisecond of the day, and none before or after", () => {
    fc.assert(
      fc.property(days, zones, (of, zone) => {
        const [start, end] = [startOfDay(of, zone), endOfDay(of, zone)];
        expect([shopDay(start, zone), shopDay(end, zone)]).toEqual([of, of]);
        expect(shopDay(instantOfTime(Date.parse(start) - 1), zone)).toBe(addDays(of, -1));
        expect(shopDay(instantOfTime(Date.parse(end) + 1), zone)).toBe(addDays(of, 1));
      }),
      { numRuns: 60, examples: [[day("2024-12-31"), FIRST_ZONE]] },
    );
  });
});
