import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { closedCalendar } from "#lib/forecast/open-days";
import { runOut } from "#lib/replenishment/run-out";
import { amount, amountOfUnits } from "#lib/units/amount";
import { day } from "#lib/units/day";

const today = day("2026-11-25");
const base = { today, arrivals: [], countedUntil: today, usePerWeek: amountOfUnits(70), calendar: [] };
const arrival = (units: number, on: string) => ({ amount: amountOfUnits(units), expectedOn: day(on) });

describe("run-out day", () => {
  it("is the first day that starts with nothing left", () => {
    expect(runOut({ ...base, stock: amountOfUnits(30) })).toBe("2026-11-28");
    expect(runOut({ ...base, stock: amountOfUnits(31) })).toBe("2026-11-29");
  });

  it("is today when nothing is left, and none when nothing is used", () => {
    expect(runOut({ ...base, stock: -5 })).toBe(today);
    expect(runOut({ ...base, stock: 5, usePerWeek: amount(0) })).toBeNull();
  });

  it("skips closed days", () => {
    const calendar = closedCalendar([{ fromDay: day("2026-11-26"), toDay: day("2026-11-30") }]);
    expect(runOut({ ...base, stock: amountOfUnits(30), calendar })).toBe("2026-12-03");
  });

  it("counts arrivals up to the given day from the start, later ones once arrived", () => {
    const soon = { ...base, stock: amountOfUnits(30), countedUntil: day("2026-12-01") };
    expect(runOut({ ...soon, arrivals: [arrival(10, "2026-12-01")] })).toBe("2026-11-29");
    expect(runOut({ ...soon, arrivals: [arrival(10, "2026-12-02")] })).toBe("2026-11-28");
    expect(runOut({ ...base, stock: amountOfUnits(30), arrivals: [arrival(10, "2026-11-28")] })).toBe(
      "2026-11-29",
    );
  });

  it("is at most ten years ahead", () => {
    expect(runOut({ ...base, stock: 1e12, usePerWeek: amount(1) })).toBe("2036-11-22");
  });

  it("never comes sooner with more stock or less use", () => {
    const parts = fc.integer({ min: 0, max: 5_000_000 });
    fc.assert(
      fc.property(parts, parts, fc.integer({ min: 1, max: 900_000 }), (stock, more, use) => {
        const before = runOut({ ...base, stock, usePerWeek: amount(use) }) ?? "~";
        expect((runOut({ ...base, stock: stock + more, usePerWeek: amount(use) }) ?? "~") >= before).toBe(
          true,
        );
        expect((runOut({ ...base, stock, usePerWeek: amount(use + more) }) ?? "~") <= before).toBe(true);
      }),
    );
  });
});
