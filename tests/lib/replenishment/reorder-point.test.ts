import { describe, expect, it } from "vitest";
import { reorderPoint } from "#lib/replenishment/reorder-point";
import { amount, amountOfUnits } from "#lib/units/amount";

describe("reorder point", () => {
  it("is the expected use and the safety stock", () => {
    const question = { usePerWeek: amountOfUnits(70), openDays: 14, safetyStock: amountOfUnits(30) };
    expect(reorderPoint(question)).toEqual({
      expectedUse: amountOfUnits(140),
      reorderPoint: amountOfUnits(170),
    });
  });

  it("matches 150 sheets a week, 2 weeks, safety 100: order at 400 (common practice, no source)", () => {
    const question = { usePerWeek: amountOfUnits(150), openDays: 14, safetyStock: amountOfUnits(100) };
    expect(reorderPoint(question).reorderPoint).toBe(amountOfUnits(400));
  });

  it("rounds the expected use down to a whole amount", () => {
    expect(reorderPoint({ usePerWeek: amount(10), openDays: 5, safetyStock: amount(0) }).expectedUse).toBe(7);
  });

  it("refuses parts below 0", () => {
    expect(() => reorderPoint({ usePerWeek: amount(-1), openDays: 5, safetyStock: amount(0) })).toThrow(
      RangeError,
    );
  });
});
