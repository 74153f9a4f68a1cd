import { describe, expect, it } from "vitest";
import { patternOfUse } from "#lib/forecast/pattern-of-use";

describe("pattern of use", () => {
  it("counts the mean interval from the start to the last use", () => {
    // Uses in weeks 3, 5, 8 and 10: 10 / 4 = 2.5; the two quiet weeks after count for nothing.
    expect(patternOfUse([0, 0, 5, 0, 4, 0, 0, 6, 0, 5, 0, 0])?.meanInterval).toBe(2.5);
  });

  it("knows no variation from a single use", () => {
    expect(patternOfUse([0, 7])).toEqual({ kind: "intermittent", meanInterval: 2, squaredVariation: 0 });
  });

  it("is none where nothing was used", () => {
    expect(patternOfUse([])).toBeNull();
    expect(patternOfUse([0, 0, 0])).toBeNull();
  });

  it("stays the same in another unit", () => {
    const pattern = patternOfUse([0, 0, 1, 0, 30, 0, 4]);
    const scaled = patternOfUse([0, 0, 12, 0, 360, 0, 48]);
    expect(scaled?.kind).toBe(pattern?.kind);
    expect(scaled?.squaredVariation).toBeCloseTo(pattern?.squaredVariation ?? 0, 12);
  });
});
