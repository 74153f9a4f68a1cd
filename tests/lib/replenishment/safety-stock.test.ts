import { describe, expect, it } from "vitest";
import { safetyStock, serviceFactor } from "#lib/replenishment/safety-stock";

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
});
