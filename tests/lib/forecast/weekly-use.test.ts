import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { shopWeeks } from "#lib/forecast/shop-weeks";
import { weeklyUse } from "#lib/forecast/weekly-use";
import { amount } from "#lib/units/amount";
import { addDays, day } from "#lib/units/day";

const firstDay = day("2026-11-02");
const weeks = shopWeeks({ firstDay, today: day("2026-11-25"), weekStartsOn: 1, calendar: [] });

describe("weekly use", () => {
  it("adds each day to its week and leaves out days outside the weeks", () => {
    const use = [
      { day: day("2026-10-30"), amount: amount(900) },
      { day: day("2026-11-02"), amount: amount(1) },
      { day: day("2026-11-08"), amount: amount(2) },
      { day: day("2026-11-22"), amount: amount(4) },
      { day: day("2026-11-23"), amount: amount(800) },
    ];
    expect(weeklyUse(use, weeks)).toEqual([
      { weekStart: "2026-11-02", amount: 3, closed: false },
      { weekStart: "2026-11-09", amount: 0, closed: false },
      { weekStart: "2026-11-16", amount: 4, closed: false },
    ]);
  });

  it("refuses days that are not oldest first", () => {
    const use = [
      { day: day("2026-11-03"), amount: amount(1) },
      { day: day("2026-11-02"), amount: amount(1) },
    ];
    expect(() => weeklyUse(use, weeks)).toThrow(RangeError);
  });

  it("loses nothing that falls into the weeks", () => {
    const amounts = fc.array(fc.integer({ min: -500, max: 5000 }), { minLength: 21, maxLength: 21 });
    fc.assert(
      fc.property(amounts, (list) => {
        const use = list.map((parts, index) => ({ day: addDays(firstDay, index), amount: amount(parts) }));
        const total = weeklyUse(use, weeks).reduce((sum, week) => sum + week.amount, 0);
        expect(total).toBe(list.reduce((sum, parts) => sum + parts, 0));
      }),
    );
  });
});
