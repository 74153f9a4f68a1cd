import { describe, expect, it } from "vitest";
import { cartonUse } from "#lib/cartons/keeping/carton-use";
import { addDays, day } from "#lib/units/day";

const today = day("2026-11-26");
const ago = (days: number, cartons: number) => ({ day: addDays(today, -days), cartons });
const longAgo = day("2020-01-01");

describe("cartonUse", () => {
  it("counts a window of 30 days with today as its last", () => {
    const use = cartonUse(
      [ago(0, 1), ago(29, 2), ago(30, 4), ago(89, 8), ago(90, 16), ago(364, 32), ago(365, 64)],
      longAgo,
      today,
    );
    expect(use).toMatchObject({ in30Days: 3, in90Days: 15, in365Days: 63, lastUsed: today });
  });

  it("rates use over 13 weeks and over a year", () => {
    const use = cartonUse([ago(10, 26), ago(200, 39)], longAgo, today);
    expect(use.weekly).toBe(2);
    expect(use.yearly).toBe(65);
  });

  it("rates use over the days watched where they are fewer", () => {
    const use = cartonUse([ago(3, 4)], addDays(today, -27), today);
    expect(use).toMatchObject({ watchedDays: 28, weekly: 1 });
    expect(use.yearly).toBeCloseTo((4 * 365) / 28, 9);
  });

  it("takes corrections off again, and does not call one a use", () => {
    const use = cartonUse([ago(5, -3), ago(9, 3)], longAgo, today);
    expect(use).toMatchObject({ in30Days: 0, weekly: 0, lastUsed: addDays(today, -9) });
    expect(cartonUse([ago(5, -3)], longAgo, today)).toMatchObject({ in30Days: 0, lastUsed: null });
  });

  it("refuses days to come", () => {
    expect(() => cartonUse([ago(-1, 1)], longAgo, today)).toThrow(RangeError);
    expect(() => cartonUse([], addDays(today, 1), today)).toThrow(RangeError);
  });
});
