import { describe, expect, it } from "vitest";
import { expectedSum, expectedWeek } from "#app/outlook/expected-sum.ts";
import { runningTotals } from "#app/outlook/running-totals.ts";
import { closedCalendar } from "#lib/forecast/open-days";
import { addDays, day } from "#lib/units/day";

const MONDAY = day("2026-11-23");
const FORECAST = {
  path: { firstWeek: MONDAY, perWeek: [70] },
  spread: { perUse: 1, whole: true, dispersions: [0, 0, 0.2] },
};
const FRAME = { calendar: [], serviceLevel: 0.95 };

describe("an expected sum", () => {
  it("is a Poisson count where nothing but chance is off", () => {
    // Poisson with mean 10: R, qpois(c(0.1, 0.9, 0.95), 10) gives 6, 14, 15 (from memory).
    const small = { ...FORECAST, path: { firstWeek: MONDAY, perWeek: [10] } };
    const sum = expectedSum(small, { ...FRAME, from: MONDAY, until: addDays(MONDAY, 7) });
    expect(sum).toEqual({ mean: 10, low: 6, high: 14, enough: 15 });
  });

  it("takes nothing on closed days", () => {
    const calendar = closedCalendar([{ fromDay: MONDAY, toDay: addDays(MONDAY, 6) }]);
    const week = { from: MONDAY, until: addDays(MONDAY, 7) };
    expect(expectedSum(FORECAST, { ...FRAME, ...week, calendar })).toEqual({
      mean: 0,
      low: 0,
      high: 0,
      enough: 0,
    });
    expect(expectedSum(FORECAST, { ...FRAME, ...week, until: addDays(MONDAY, 8), calendar }).mean).toBe(10);
  });

  it("grows by the days from today on", () => {
    const totals = runningTotals(FORECAST, { ...FRAME, today: addDays(MONDAY, 2) });
    expect(totals).toHaveLength(13);
    expect(totals[0]).toMatchObject({ weeks: 1, lastDay: addDays(MONDAY, 8), mean: 70 });
    expect(totals[12]?.mean).toBeCloseTo(13 * 70, 9);
  });
});

describe("a single coming week", () => {
  it("is no surer than the sum that ends with it", () => {
    const of = (ahead: number) =>
      expectedWeek(FORECAST, { from: MONDAY, until: addDays(MONDAY, 7), ahead }, []).eightInTen;
    expect(of(2)).toEqual(of(1));
    expect(of(3)[1]).toBeGreaterThan(of(1)[1]);
    expect(of(3)[0]).toBeLessThan(of(1)[0]);
    expect(of(20)).toEqual(of(3));
  });

  it("has the narrower band inside the wider one", () => {
    const { eightInTen, fiveInTen, mean } = expectedWeek(
      FORECAST,
      { from: MONDAY, until: addDays(MONDAY, 7), ahead: 1 },
      [],
    );
    const [low, lower, upper, high] = [eightInTen[0], fiveInTen[0], fiveInTen[1], eightInTen[1]];
    expect([low, lower, mean, upper, high]).toEqual(
      [low, lower, mean, upper, high].toSorted((a, b) => a - b),
    );
  });
});
