import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { closedCalendar } from "#lib/forecast/open-days";
import { carefulRunOut, chanceToLast, likelyRunOut, type RunOutQuestion } from "#lib/replenishment/run-out";
import { gammaTails } from "#lib/statistics/gamma";
import { amount, amountOfUnits } from "#lib/units/amount";
import { addDays, day } from "#lib/units/day";

const today = day("2026-11-25");
const sure = { perUse: 0, dispersions: [0], whole: false };
const forecastOf = (perWeek: number, spread = sure) => ({
  path: { firstWeek: day("2026-11-23"), perWeek: [perWeek] },
  spread,
});
const base: Omit<RunOutQuestion, "stock"> = {
  today,
  arrivals: [],
  countedUntil: today,
  forecast: forecastOf(70),
  calendar: [],
};
const arrival = (units: number, on: string) => ({ amount: amountOfUnits(units), expectedOn: day(on) });
const likely = (changes: Partial<RunOutQuestion>) =>
  likelyRunOut({ ...base, stock: amountOfUnits(30), ...changes }).day;

describe("likely run-out day", () => {
  it("is the first day that starts with nothing left", () => {
    expect(likely({})).toBe("2026-11-28");
    expect(likely({ stock: amountOfUnits(31) })).toBe("2026-11-29");
  });

  it("is today when nothing is left, and none when nothing is used", () => {
    expect(likely({ stock: amount(-5) })).toBe(today);
    expect(likely({ stock: amount(5), forecast: forecastOf(0) })).toBeNull();
  });

  it("skips closed days", () => {
    const calendar = closedCalendar([{ fromDay: day("2026-11-26"), toDay: day("2026-11-30") }]);
    expect(likely({ calendar })).toBe("2026-12-03");
  });

  it("counts arrivals up to the given day from the start, later ones once arrived", () => {
    const countedUntil = day("2026-12-01");
    expect(likely({ countedUntil, arrivals: [arrival(10, "2026-12-01")] })).toBe("2026-11-29");
    expect(likely({ countedUntil, arrivals: [arrival(10, "2026-12-02")] })).toBe("2026-11-28");
    expect(likely({ arrivals: [arrival(10, "2026-11-28")] })).toBe("2026-11-29");
  });

  it("is none where the stock lasts for ten years", () => {
    expect(likely({ stock: amount(1e12), forecast: forecastOf(1) })).toBeNull();
  });

  it("never comes sooner with more stock or less use", () => {
    const parts = fc.integer({ min: 0, max: 5_000_000 });
    fc.assert(
      fc.property(parts, parts, fc.integer({ min: 1, max: 900_000 }), (stock, more, use) => {
        const dayOf = (held: number, used: number) =>
          likely({ stock: amount(held), forecast: forecastOf(used / 12_000) }) ?? "~";
        const before = dayOf(stock, use);
        expect(dayOf(stock + more, use) >= before).toBe(true);
        expect(dayOf(stock, use + more) <= before).toBe(true);
      }),
    );
  });
});

describe("careful run-out day", () => {
  const spread = { perUse: 5, dispersions: [0.1], whole: false };
  const unsure = { ...base, stock: amountOfUnits(100), forecast: forecastOf(70, spread) };

  it("is the likely one where nothing is unsure", () => {
    expect(carefulRunOut({ ...base, stock: amountOfUnits(30) }, 0.95).day).toBe("2026-11-28");
  });

  it("is the first day before which stock has ended with more than the chance that may be", () => {
    const { day: found } = carefulRunOut(unsure, 0.95);
    if (found === null) throw new RangeError("a stock of ten days ends");
    const lasts = (until: typeof today) => chanceToLast(unsure, until, unsure.stock);
    expect(lasts(found)).toBeLessThan(0.95);
    expect(lasts(addDays(found, -1))).toBeGreaterThanOrEqual(0.95);
    expect(found < (likelyRunOut(unsure).day ?? "")).toBe(true);
  });

  it("is later with a smaller wanted chance, never after the likely one", () => {
    const dayAt = (level: number) => carefulRunOut(unsure, level).day ?? "~";
    expect(dayAt(0.98) <= dayAt(0.9)).toBe(true);
    expect(dayAt(0.9) <= dayAt(0.6)).toBe(true);
    expect(dayAt(0.05)).toBe(likelyRunOut(unsure).day);
  });

  it("reckons the chance by the forecast's distribution: gamma, mean 70, variance 5 × 70 + 0.1 × 70²", () => {
    const variance = 5 * 70 + 0.1 * 70 ** 2;
    const gamma = { shape: 70 ** 2 / variance, scale: variance / 70 };
    const chance = chanceToLast(unsure, addDays(today, 7), amountOfUnits(100));
    expect(chance).toBeCloseTo(gammaTails(100, gamma).lower, 10);
  });
});
