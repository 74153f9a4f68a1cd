import { describe, expect, it } from "vitest";
import { fourWeeksTo, lastMonths, usualDayBefore } from "#app/recipes/[id]/changes/change-span.ts";
import { day, daysBetween, weekday } from "#lib/units/day";

describe("spans of days to compare", () => {
  it("are four whole weeks", () => {
    expect(fourWeeksTo(day("2026-05-31"))).toEqual({ from: "2026-05-04", to: "2026-05-31" });
  });

  it("lie half a year back, on the same weekday", () => {
    const back = usualDayBefore(day("2026-11-25"));
    expect(weekday(back)).toBe(weekday(day("2026-11-25")));
    expect(daysBetween(back, day("2026-11-25"))).toBe(182);
  });

  it("are the months of the last year, this one up to today", () => {
    const months = lastMonths(day("2024-03-05"));
    expect(months).toHaveLength(12);
    expect(months[0]).toEqual({ month: "2023-04", from: "2023-04-01", to: "2023-04-30" });
    expect(months.at(-2)).toEqual({ month: "2024-02", from: "2024-02-01", to: "2024-02-29" });
    expect(months.at(-1)).toEqual({ month: "2024-03", from: "2024-03-01", to: "2024-03-05" });
  });
});
