import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { closedCalendar } from "#lib/forecast/open-days";
import { expectedUse, type UsePath, usedUpOn } from "#lib/forecast/use-path";
import { addDays, day } from "#lib/units/day";

// The sums are worked out by hand: an open day takes a seventh of its week's. Common practice, no source.
const monday = day("2026-11-30");
const dayAt = (days: number) => addDays(monday, days);
const path: UsePath = { firstWeek: monday, perWeek: [70, 140] };
const midweek = closedCalendar([{ fromDay: dayAt(1), toDay: dayAt(3) }]);

const paths = fc
  .array(fc.integer({ min: 0, max: 400 }), { minLength: 1, maxLength: 5 })
  .map((perWeek): UsePath => ({ firstWeek: monday, perWeek }));
const calendars = fc
  .array(fc.record({ from: fc.nat(60), length: fc.nat(12) }), { maxLength: 4 })
  .map((spans) =>
    closedCalendar(spans.map(({ from, length }) => ({ fromDay: dayAt(from), toDay: dayAt(from + length) }))),
  );

describe("expected use", () => {
  it("takes whole weeks as they are, and a seventh for each open day of a part of one", () => {
    expect(expectedUse(path, { from: monday, until: dayAt(14) }, [])).toBe(210);
    expect(expectedUse(path, { from: dayAt(5), until: dayAt(9) }, [])).toBe(2 * 10 + 2 * 20);
  });

  it("goes on as the last week", () => {
    expect(expectedUse(path, { from: dayAt(70), until: dayAt(77) }, [])).toBe(140);
    expect(expectedUse(path, { from: monday, until: dayAt(28) }, [])).toBe(70 + 3 * 140);
  });

  it("takes nothing on closed days", () => {
    expect(expectedUse(path, { from: monday, until: dayAt(7) }, midweek)).toBe(40);
    expect(expectedUse(path, { from: dayAt(1), until: dayAt(4) }, midweek)).toBe(0);
  });

  it("is nothing from a day until the same day", () => {
    expect(expectedUse(path, { from: dayAt(3), until: dayAt(3) }, [])).toBe(0);
  });

  it("of two stretches is the sum of theirs", () => {
    fc.assert(
      fc.property(paths, calendars, fc.nat(30), fc.nat(30), fc.nat(30), (use, calendar, a, b, c) => {
        const [first, middle, last] = [dayAt(a), dayAt(a + b), dayAt(a + b + c)];
        const whole = expectedUse(use, { from: first, until: last }, calendar);
        const parts =
          expectedUse(use, { from: first, until: middle }, calendar) +
          expectedUse(use, { from: middle, until: last }, calendar);
        expect(whole).toBeCloseTo(parts, 8);
      }),
    );
  });

  it("refuses a day before the path", () => {
    expect(() => expectedUse(path, { from: dayAt(-1), until: monday }, [])).toThrow(
      new RangeError("expectedUse requires a day from 2026-11-30, got 2026-11-29"),
    );
  });
});

describe("day on which a stock is used up", () => {
  const last = dayAt(400);

  it("is the first that starts with nothing left", () => {
    expect(usedUpOn(path, { from: monday, stock: 30, last }, [])).toBe(dayAt(3));
    expect(usedUpOn(path, { from: monday, stock: 31, last }, [])).toBe(dayAt(4));
    expect(usedUpOn(path, { from: monday, stock: 70, last }, [])).toBe(dayAt(7));
    expect(usedUpOn(path, { from: monday, stock: 90, last }, [])).toBe(dayAt(8));
  });

  it("lies after the closed days that a stock outlasts", () => {
    expect(usedUpOn(path, { from: monday, stock: 10, last }, midweek)).toBe(dayAt(1));
    expect(usedUpOn(path, { from: monday, stock: 20, last }, midweek)).toBe(dayAt(5));
  });

  it("is the day asked from where there is no stock", () => {
    expect(usedUpOn(path, { from: dayAt(2), stock: 0, last }, [])).toBe(dayAt(2));
    expect(usedUpOn(path, { from: dayAt(2), stock: -5, last }, [])).toBe(dayAt(2));
  });

  it("is unknown where the stock lasts beyond the last day looked at, and where nothing is used", () => {
    expect(usedUpOn(path, { from: monday, stock: 70, last: dayAt(7) }, [])).toBe(dayAt(7));
    expect(usedUpOn(path, { from: monday, stock: 70, last: dayAt(6) }, [])).toBeNull();
    expect(usedUpOn({ firstWeek: monday, perWeek: [0] }, { from: monday, stock: 1, last }, [])).toBeNull();
  });

  it("refuses a day before the path, of which the path says nothing", () => {
    expect(() => usedUpOn(path, { from: dayAt(-7), stock: 5, last }, [])).toThrow(RangeError);
  });

  it("agrees with the expected use: enough until the day before, not enough for the day itself", () => {
    fc.assert(
      fc.property(
        paths,
        calendars,
        fc.nat(20),
        fc.integer({ min: 1, max: 900 }),
        (use, calendar, a, stock) => {
          const from = dayAt(a);
          const end = usedUpOn(use, { from, stock, last }, calendar);
          const usedBefore = (until: typeof from) => expectedUse(use, { from, until }, calendar);
          if (end === null) {
            expect(usedBefore(last)).toBeLessThan(stock);
            return;
          }
          expect(usedBefore(end)).toBeGreaterThanOrEqual(stock - 1e-6);
          expect(usedBefore(addDays(end, -1))).toBeLessThan(stock);
        },
      ),
    );
  });

  it("is the day until which a stock was reckoned, whatever the rounding of sevenths", () => {
    const uses = fc.array(fc.double({ min: 0.01, max: 100, noNaN: true }), { minLength: 1, maxLength: 5 });
    fc.assert(
      fc.property(uses, fc.nat(9), fc.integer({ min: 1, max: 60 }), (perWeek, start, days) => {
        const use: UsePath = { firstWeek: monday, perWeek };
        const [from, until] = [dayAt(start), dayAt(start + days)];
        const stock = expectedUse(use, { from, until }, []);
        expect(usedUpOn(use, { from, stock, last }, [])).toBe(until);
      }),
      { numRuns: 400 },
    );
  });
});
