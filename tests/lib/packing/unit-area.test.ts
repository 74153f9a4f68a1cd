import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { amountHolding, unitArea } from "#lib/packing/unit-area";
import { unitsOf } from "#lib/units/amount";
import { largeBubble, looseFill, paper, smallBubble } from "./bench-shop";

const SQUARE_FOOT = 304_800 ** 2;

describe("unitArea", () => {
  it("is six square feet for a sheet of 24 by 36 in", () => {
    expect(unitArea(paper)).toBe(6 * SQUARE_FOOT);
  });

  it("is a square foot for a piece of 12 in torn from a roll 12 in wide, and for a foot of it", () => {
    expect(unitArea(smallBubble)).toBe(SQUARE_FOOT);
    expect(unitArea({ ...smallBubble, useUnit: "foot" })).toBe(SQUARE_FOOT);
  });

  it("is a square foot or metre whatever the roll where the unit says so", () => {
    expect(unitArea(largeBubble)).toBe(SQUARE_FOOT);
    expect(unitArea({ ...largeBubble, useUnit: "square-metre" })).toBe(1e12);
  });

  it("is unknown for loose fill, strips, and pieces of a roll that does not tear", () => {
    const uncut = { kind: "roll", widthUm: 304_800, pieceUm: null, thickUm: 0 } as const;
    expect(unitArea(looseFill)).toBeNull();
    expect(unitArea({ useUnit: "strip", form: uncut })).toBeNull();
    expect(unitArea({ useUnit: "piece", form: uncut })).toBeNull();
    expect(unitArea({ useUnit: "foot", form: { ...uncut, widthUm: 0 } })).toBeNull();
  });
});

describe("amountHolding", () => {
  it("does not round up what comes out whole", () => {
    expect(unitsOf(amountHolding(SQUARE_FOOT * 0.1 * 3, SQUARE_FOOT * 0.1))).toBe(3);
  });

  it("holds at least what was asked for, and less than one part more", () => {
    const measures = fc.double({ min: 0, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(measures, fc.double({ min: 0.01, max: 1e4, noNaN: true }), (measure, perUnit) => {
        const held = unitsOf(amountHolding(measure, perUnit)) * perUnit;
        expect(held).toBeGreaterThanOrEqual(measure - (1e-6 * perUnit) / 1000 - measure * 1e-12);
        expect(held).toBeLessThan(measure + perUnit / 12_000 + measure * 1e-12);
      }),
    );
  });

  it("refuses a unit that holds nothing", () => {
    expect(() => amountHolding(1, 0)).toThrow(RangeError);
  });
});
