import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { closedCalendar } from "#lib/forecast/open-days";
import { runOut } from "#lib/replenishment/run-out";
import { amountOfUnits } from "#lib/units/amount";
import { day } from "#lib/units/day";

const today = day("2026-11-25");
const pathOf = (perWeek: number) => ({ firstWeek: day("2026-11-23"), perWeek: [perWeek] });
const base = { today, arrivals: [], countedUntil: today, path: pathOf(70), calendar: [] };
const arrival = (units: number, on: string) => ({ amount: amountOfUnits(units), expectedOn: day(on) });

describe("run-out day", () => {
  it("is the first day that starts with nothing left", () => {
    expect(runOut({ ...base, stock: amountOfUnits(30) })).toBe("2026-11-28");
    expect(runOut({ ...base, stock: amountOfUnits(31) })).toBe("2026-11-29");
  });

  it("is today when nothing is left, and none when nothing is used", () => {
    expect(runOut({ ...base, stock: -5 })).toBe(today);
    expect(runOut({ ...base, stock: 5, path: pathOf(0) })).toBeNull();
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

  it("is none where the stock lasts for ten years", () => {
    expect(runOut({ ...base, stock: 1e12, path: pathOf(1) })).toBeNull();
  });

  it("never comes sooner with more stock or less use", () => {
    const parts = fc.integer({ min: 0, max: 5_000_000 });
    fc.assert(
      fc.property(parts, parts, fc.integer({ min: 1, max: 900_000 }), (stock, more, use) => {
        const before = runOut({ ...base, stock, path: pathOf(use / 12_000) }) ?? "~";
        expect((runOut({ ...base, stock: stock + more, path: pathOf(use / 12_000) }) ?? "~") >= before).toBe(
          true,
        );
        expect((runOut({ ...base, stock, path: pathOf((use + more) / 12_000) }) ?? "~") <= before).toBe(true);
      }),
    );
  });
});
