import { describe, expect, it } from "vitest";
import { saidScore, saidWords } from "#app/outlook/said-score.ts";
import { day } from "#lib/units/day";

const sum = (actual: number) => ({
  from: day("2026-11-02"),
  expected: 100,
  low: 80,
  high: 125,
  enough: 140,
  actual,
});

describe("how past sums came out", () => {
  it("is counted with both ends of the band inside", () => {
    expect(saidScore([sum(80), sum(125), sum(79), sum(126), sum(141)])).toEqual({
      sums: 5,
      inside: 2,
      lasted: 4,
    });
  });

  it("is told beside what is meant", () => {
    const words = saidWords({ sums: 40, inside: 33, lasted: 38 }, { horizonWeeks: 3, serviceLevel: 0.95 });
    expect(words.finding).toBe("Of 40 past sums of 3 weeks, 33 came out inside the band.");
    expect(words.aside).toContain("83 in 100; 80 are meant");
    expect(words.aside).toContain("38 of 40 times, 95 in 100; 95 are meant");
    expect(words.aside).toContain("overlap");
    expect(words.aside).not.toContain("So few");
  });

  it("warns where few sums do not overlap", () => {
    const words = saidWords({ sums: 9, inside: 9, lasted: 9 }, { horizonWeeks: 3, serviceLevel: 0.975 });
    expect(words.aside).toContain("So few sums");
    expect(words.aside).toContain("97.5 are meant");
  });
});
