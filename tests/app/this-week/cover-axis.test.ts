import { describe, expect, it } from "vitest";
import { coverAxis, percentOn } from "#app/this-week/cover-axis.ts";
import { day } from "#lib/units/day";

describe("cover axis", () => {
  const axis = coverAxis(day("2026-11-25"), 1);

  it("marks the first days of the coming weeks and names the month where it changes", () => {
    expect(axis.ticks.map((tick) => tick.words)).toEqual([
      "30 Nov",
      "7 Dec",
      "14",
      "21",
      "28",
      "4 Jan",
      "11",
      "18",
      "25",
      "1 Feb",
    ]);
  });

  it("begins its weeks on the shop's day", () => {
    expect(coverAxis(day("2026-11-25"), 7).ticks[0]?.day).toBe("2026-11-29");
  });

  it("puts today at the start, five weeks in the middle and later days at the end", () => {
    expect(percentOn(axis, day("2026-11-25"))).toBe(0);
    expect(percentOn(axis, day("2026-12-30"))).toBe(50);
    expect(percentOn(axis, day("2027-11-25"))).toBe(100);
  });

  it("puts days gone by at the start", () => {
    expect(percentOn(axis, day("2026-11-01"))).toBe(0);
  });
});
