import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sheetParts } from "#lib/packing/wrap/sheet-parts";
import { unitsOf } from "#lib/units/amount";
import { inches } from "../bench-shop";

const sheet = { lengthUm: inches(36), widthUm: inches(24) };
const need = (length: number, width: number) => ({
  lengthUm: inches(length),
  widthUm: inches(width),
  wishedWidthUm: inches(width),
  overlapUm: inches(2),
});
const parts = (length: number, width: number) => {
  const { count, denominator } = sheetParts(need(length, width), sheet);
  return `${count}/${denominator}`;
};

// Computed from the rule; that paper is torn in halves, thirds and quarters is common practice, no source.
describe("sheetParts", () => {
  it("takes the smallest part that holds the strip, either way round", () => {
    expect(parts(18, 12)).toBe("1/4");
    expect(parts(12, 18)).toBe("1/4");
    expect(parts(24, 12)).toBe("1/3");
    expect(parts(23, 17)).toBe("1/2");
    expect(parts(36, 24)).toBe("1/1");
  });

  it("lays parts end to end with the overlap", () => {
    // Two halves, joined along 24 in: 24 + 24 - 2 in; two thirds are 46 in long too, and 12 in wide.
    expect(parts(46, 18)).toBe("2/2");
    expect(parts(46, 12)).toBe("2/3");
    expect(parts(46.1, 12)).toBe("3/4");
  });

  it("lays sheets side by side where the strip is wider than any", () => {
    expect(parts(30, 40)).toBe("2/1");
  });

  it("covers the strip with less than a sheet to spare each way, and is a whole number of parts", () => {
    const side = fc.integer({ min: 1000, max: 3_000_000 });
    fc.assert(
      fc.property(side, side, (lengthUm, widthUm) => {
        const strip = { lengthUm, widthUm, wishedWidthUm: widthUm, overlapUm: inches(2) };
        const { amount, count, denominator } = sheetParts(strip, sheet);
        expect(unitsOf(amount) * denominator).toBeCloseTo(count, 9);
        expect(unitsOf(amount) * sheet.lengthUm * sheet.widthUm).toBeGreaterThanOrEqual(
          lengthUm * widthUm * (1 - 1e-12),
        );
        const whole = Math.ceil(lengthUm / inches(34)) * Math.ceil(widthUm / inches(24));
        expect(unitsOf(amount)).toBeLessThanOrEqual(whole);
      }),
    );
  });

  it("never shrinks as the strip grows", () => {
    const side = fc.integer({ min: 1000, max: 2_000_000 });
    fc.assert(
      fc.property(side, side, fc.nat(400_000), fc.nat(400_000), (lengthUm, widthUm, longer, wider) => {
        const strip = { lengthUm, widthUm, wishedWidthUm: widthUm, overlapUm: inches(2) };
        const more = { ...strip, lengthUm: lengthUm + longer, widthUm: widthUm + wider };
        expect(sheetParts(more, sheet).amount).toBeGreaterThanOrEqual(sheetParts(strip, sheet).amount);
      }),
    );
  });

  it("refuses a sheet that is no longer than the overlap", () => {
    expect(() => sheetParts(need(30, 1), { lengthUm: inches(2), widthUm: inches(2) })).toThrow(RangeError);
  });
});
