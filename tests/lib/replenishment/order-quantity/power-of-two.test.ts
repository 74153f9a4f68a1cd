import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { costRatio, powerOfTwo } from "#lib/replenishment/order-quantity/power-of-two";

describe("a rhythm of powers of two", () => {
  it("is the cheapest of them", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 1000, noNaN: true }), (interval) => {
        const found = costRatio(powerOfTwo(interval) / interval);
        for (let power = 1; power < 5000; power *= 2) {
          expect(found).toBeLessThanOrEqual(costRatio(power / interval) * (1 + 1e-9));
        }
      }),
    );
  });

  it("is the shorter of two that cost the same, and at least one period", () => {
    expect(powerOfTwo(Math.SQRT2)).toBe(1);
    expect(powerOfTwo(2 * Math.SQRT2)).toBe(2);
    expect(powerOfTwo(0)).toBe(1);
  });

  it("asks for an interval and a ratio", () => {
    expect(() => powerOfTwo(-1)).toThrow(/from 0, got -1/);
    expect(() => costRatio(0)).toThrow(/above 0, got 0/);
  });
});
