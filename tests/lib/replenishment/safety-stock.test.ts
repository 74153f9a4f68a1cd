import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  safetyStock,
  serviceFactor,
  shortHistoryDeviation,
  shortHistoryFactor,
} from "#lib/replenishment/safety-stock";

describe("safety stock", () => {
  it("is the factor times the deviation", () => {
    expect(safetyStock(1.65, 10)).toBe(16.5);
  });

  it("is never below 0, whatever the service level", () => {
    expect(safetyStock(serviceFactor(0.3), 10)).toBe(0);
  });

  it("refuses a negative or unknown deviation", () => {
    expect(() => safetyStock(1, -1)).toThrow(RangeError);
    expect(() => safetyStock(1, Number.NaN)).toThrow(RangeError);
  });

  it("of a short history follows s sqrt(L + L^2 / n)", () => {
    expect(shortHistoryDeviation(10, 2, 4)).toBeCloseTo(10 * Math.sqrt(3), 12);
    expect(() => shortHistoryDeviation(10, 2, 0)).toThrow(RangeError);
  });

  it("of a short history keeps more than of a long one", () => {
    fc.assert(
      fc.property(fc.integer({ min: 55, max: 99 }), fc.integer({ min: 2, max: 13 }), (percent, weeks) => {
        expect(shortHistoryFactor(percent / 100, weeks)).toBeGreaterThan(serviceFactor(percent / 100));
      }),
    );
  });
});
