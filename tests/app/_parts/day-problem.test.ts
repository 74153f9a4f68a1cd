import { describe, expect, it } from "vitest";
import { dayProblem } from "#app/_parts/day-problem.ts";
import { day } from "#lib/units/day";

const today = day("2026-11-25");

describe("day problem", () => {
  it("lets today and the past stand", () => {
    expect(dayProblem(today, today)).toBeNull();
    expect(dayProblem(day("2026-02-28"), today)).toBeNull();
  });

  it("names a day that is still ahead, and one with a mistyped year", () => {
    expect(dayProblem(day("2026-11-26"), today)).toBe(
      "26 Nov 2026 is still ahead. Choose today or an earlier day.",
    );
    expect(dayProblem(day("1900-01-01"), today)).toBe("1 Jan 1900 is too long ago. Check the year.");
  });

  it("names a day before the parcel was packed", () => {
    expect(dayProblem(day("2026-11-20"), today, day("2026-11-21"))).toContain("before the parcel was packed");
    expect(dayProblem(day("2026-11-21"), today, day("2026-11-21"))).toBeNull();
  });
});
