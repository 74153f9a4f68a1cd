import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { weightedMovingAverage } from "#lib/forecast/weighted-moving-average";

describe("weighted moving average", () => {
  it("weighs the newest week heaviest: (10 + 2 × 20 + 3 × 30) / 6", () => {
    expect(weightedMovingAverage([90, 10, 20, 30], 3)).toBeCloseTo(140 / 6, 12);
  });

  it.each([0, 5])("refuses a window of %s weeks out of 4", (window) => {
    expect(() => weightedMovingAverage([1, 2, 3, 4], window)).toThrow(RangeError);
  });

  it("of equal weeks is that week", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1_000_000 }), fc.constantFrom(4, 8, 13), (use, window) => {
        expect(
          weightedMovingAverage(
            Array.from({ length: 13 }, () => use),
            window,
          ),
        ).toBeCloseTo(use, 6);
      }),
    );
  });
});
