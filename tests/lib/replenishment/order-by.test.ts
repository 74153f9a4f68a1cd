import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { closedCalendar } from "#lib/forecast/open-days";
import { chanceUntilDelivery, type OrderByQuestion, orderBy } from "#lib/replenishment/order-by";
import { carefulRunOut, type RunOutQuestion } from "#lib/replenishment/run-out";
import { amountOfUnits } from "#lib/units/amount";
import { addDays, day } from "#lib/units/day";
import { onTime } from "./on-time";

const today = day("2026-11-25");
const sure = { perUse: 0, dispersions: [0], whole: false };

/** Ten a day are used. */
function question(units: number, changes: Partial<OrderByQuestion> = {}): OrderByQuestion {
  const of: RunOutQuestion = {
    today,
    stock: amountOfUnits(units),
    arrivals: [],
    countedUntil: today,
    forecast: { path: { firstWeek: day("2026-11-23"), perWeek: [70] }, spread: sure },
    calendar: [],
    ...changes,
  };
  const level = changes.level ?? 0.95;
  return { ...of, delivery: onTime(9), level, runOut: carefulRunOut(of, level), ...changes };
}

describe("order-by day", () => {
  it("is the last day whose order comes before stock ends", () => {
    // 120 last for 12 days, so for the morning of 7 Dec; ordered on 28 Nov it comes then.
    expect(orderBy(question(120))).toBe("2026-11-28");
    expect(orderBy(question(129))).toBe("2026-11-28");
  });

  it("is today when that day is past, and none where nothing is used", () => {
    expect(orderBy(question(20))).toBe(today);
    const forecast = { path: { firstWeek: day("2026-11-23"), perWeek: [0] }, spread: sure };
    expect(orderBy(question(20, { forecast }))).toBeNull();
  });

  it("moves back before a closure of the shop", () => {
    const calendar = closedCalendar([{ fromDay: day("2026-12-03"), toDay: day("2026-12-10") }]);
    // 80 last until 2 Dec, and over the closed days until 11 Dec: 2 days before that it is closed, so 2 Dec.
    expect(orderBy(question(80, { calendar, delivery: onTime(2) }))).toBe("2026-12-02");
  });

  it("leaves room for late deliveries as far as the goal asks for it", () => {
    const belief = {
      chances: [
        { daysLate: 0, chance: 0.92 },
        { daysLate: 4, chance: 0.08 },
      ],
      promiseShare: 0,
      deliveries: 20,
    };
    const late = { delivery: { ...onTime(9), belief } };
    expect(orderBy(question(150, { ...late, level: 0.9 }))).toBe("2026-12-01");
    expect(orderBy(question(150, { ...late, level: 0.95 }))).toBe("2026-11-27");
    expect(chanceUntilDelivery(day("2026-11-28"), question(150, late))).toBeCloseTo(0.92, 12);
  });

  it("keeps the chance on that day, and on no later open day", () => {
    const spread = { perUse: 6, dispersions: [0.08, 0.05], whole: false };
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 900 }),
        fc.integer({ min: 0, max: 20 }),
        fc.constantFrom(0.8, 0.9, 0.98),
        (units, lead, level) => {
          const forecast = { path: { firstWeek: day("2026-11-23"), perWeek: [70, 40, 90] }, spread };
          const of = question(units, { forecast, delivery: onTime(lead), level });
          const found = orderBy(of);
          fc.pre(found !== null && found > today);
          expect(chanceUntilDelivery(found ?? today, of)).toBeGreaterThanOrEqual(level);
          expect(chanceUntilDelivery(addDays(found ?? today, 1), of)).toBeLessThan(level);
        },
      ),
    );
  });
});
