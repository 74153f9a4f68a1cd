import { describe, expect, it } from "vitest";
import { peakPreparation } from "#lib/replenishment/peak-preparation";
import { amountOfUnits, unitsOf } from "#lib/units/amount";
import { day } from "#lib/units/day";

const monday = day("2026-10-05");
const peakOf = (perWeek: readonly number[], position = 0) =>
  peakPreparation(
    { path: { firstWeek: monday, perWeek }, position: amountOfUnits(position), today: monday },
    [],
  );

describe("preparation for a peak", () => {
  it("names the busiest week and what is used until it is over", () => {
    const peak = peakOf([10, 10, 14, 20, 18, 11, 10], 30);
    expect(peak).toMatchObject({ busiestWeek: "2026-10-26", times: 2, until: "2026-11-09" });
    expect(unitsOf(peak?.needed ?? amountOfUnits(0))).toBeCloseTo(72, 3);
    expect(unitsOf(peak?.missing ?? amountOfUnits(0))).toBeCloseTo(42, 3);
  });

  it("lasts as far as the forecast reaches where it is not over", () => {
    expect(peakOf([10, 10, 14, 20])?.until).toBe("2026-11-02");
  });

  it("misses nothing where all is there", () => {
    expect(peakOf([10, 10, 20, 10], 500)?.missing).toBe(0);
  });

  it("is none of what is steady, unused, or busiest now", () => {
    expect(peakOf([10, 10, 12, 10])).toBeNull();
    expect(peakOf([0, 0, 0])).toBeNull();
    expect(peakOf([20, 18, 12, 10])).toBeNull();
    expect(peakOf([10])).toBeNull();
  });
});
