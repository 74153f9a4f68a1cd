import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { closedCalendar } from "#lib/forecast/open-days";
import { arrivalDay, orderBy, protectionInterval } from "#lib/replenishment/order-by";
import { addDays, day } from "#lib/units/day";

const today = day("2026-11-25");
const christmas = closedCalendar([{ fromDay: day("2026-12-24"), toDay: day("2027-01-03") }]);

describe("arrival day", () => {
  it("is the lead time later, moved on past closed days", () => {
    expect(arrivalDay(today, 9, [])).toBe("2026-12-04");
    expect(arrivalDay(day("2026-12-18"), 9, christmas)).toBe("2027-01-04");
  });
});

describe("protection interval", () => {
  it("is the lead time and the review period", () => {
    const terms = { leadTimeDays: 9, reviewDays: 7 };
    expect(protectionInterval(today, terms, [])).toEqual({ until: "2026-12-11", days: 16 });
  });

  it("waits for the shop to open, for the check and for the delivery", () => {
    const terms = { leadTimeDays: 3, reviewDays: 7 };
    expect(protectionInterval(day("2026-12-18"), terms, christmas)).toEqual({
      until: "2027-01-07",
      days: 20,
    });
  });
});

describe("order-by day", () => {
  it("is the latest day whose order still comes before the run-out", () => {
    expect(orderBy(day("2026-12-07"), { today, leadTimeDays: 9 }, [])).toBe("2026-11-27");
  });

  it("is today when that day is past", () => {
    expect(orderBy(day("2026-11-26"), { today, leadTimeDays: 9 }, [])).toBe(today);
  });

  it("moves back before a closure", () => {
    expect(orderBy(day("2027-01-04"), { today, leadTimeDays: 2 }, christmas)).toBe("2026-12-21");
    expect(orderBy(day("2027-01-05"), { today, leadTimeDays: 2 }, christmas)).toBe("2026-12-23");
  });

  it("an order on that day comes before the run-out, one on a later open day does not", () => {
    const days = fc.integer({ min: 0, max: 60 });
    fc.assert(
      fc.property(
        days,
        fc.integer({ min: 0, max: 20 }),
        days,
        fc.integer({ min: 0, max: 12 }),
        (run, lead, at, long) => {
          const calendar = closedCalendar([
            { fromDay: addDays(today, at + 1), toDay: addDays(today, at + 1 + long) },
          ]);
          const end = addDays(today, run);
          const found = orderBy(end, { today, leadTimeDays: lead }, calendar);
          fc.pre(found > today);
          const later = [...Array(40).keys()]
            .map((step) => addDays(found, step + 1))
            .find((each) => arrivalDay(each, 0, calendar) === each);
          expect(arrivalDay(found, lead, calendar) < end).toBe(true);
          expect(later !== undefined && arrivalDay(later, lead, calendar) >= end).toBe(true);
        },
      ),
    );
  });
});
