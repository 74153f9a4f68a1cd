import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type CartonTerms, cartonCost } from "#lib/cartons/cost/carton-cost";
import type { OfferedCarton, PackedLoad } from "#lib/cartons/cost/packed-load";
import { USUAL_LEGS } from "#lib/packing/carton-tape";

const IN = 25_400;
const CUBIC_INCH_ML = 16.387064;
const cube = (id: string, inches: number, value: number): OfferedCarton => ({
  id,
  inside: { lengthUm: inches * IN, widthUm: inches * IN, heightUm: inches * IN },
  boardUm: 4_000,
  massMg: 435_000,
  value,
});
const eightCube: PackedLoad = {
  pieces: [{ block: { lengthUm: 8 * IN, widthUm: 8 * IN, heightUm: 8 * IN }, upright: false }],
  ml: 512 * CUBIC_INCH_ML,
  massMg: 1_000_000,
};
const terms: CartonTerms = {
  fill: { mlPerUnit: 52 * CUBIC_INCH_ML, massMg: 27_200, value: 70_000 },
  tape: { pattern: "h", legs: USUAL_LEGS, factor: 1, massMgPerUm: 2.3e-3, valuePerUm: 0.5 },
  bulgeUm: 0,
  postage: () => null,
};

describe("what a load costs in a carton", () => {
  // The 12 in cube round an 8 in cube: 1,216 cu in = 23.4 sheets and 636 g firm; H tape on 12 x 12 is 99 in. Common
  // practice, no source; worked by hand.
  it("is carton, sheets for the void, and tape, as by hand", () => {
    const cost = cartonCost(eightCube, cube("12", 12, 1_000_000), terms);
    expect(cost.voidMl).toBeCloseTo(1_216 * CUBIC_INCH_ML, 6);
    expect(cost.fillUnits).toBeCloseTo(23.3846, 4);
    expect(cost.fillUnits * 27.2).toBeCloseTo(636.06, 2);
    expect(cost.tapeUm).toBe(99 * IN);
    expect(cost.fillValue).toBeCloseTo(23.384615 * 70_000, 0);
    expect(cost.totalValue).toBeCloseTo(1_000_000 + 1_636_923.08 + 99 * IN * 0.5, 1);
    expect(cost.massMg).toBeCloseTo(1_000_000 + 435_000 + 636_061.5 + 99 * IN * 2.3e-3, 0);
    expect(cost.postageValue).toBeNull();
  });

  it("asks for postage by the mass that comes of it and by the outside, and adds it", () => {
    const asked: [number, readonly number[]][] = [];
    const cost = cartonCost(eightCube, cube("12", 12, 0), {
      ...terms,
      postage: (massMg, size) => {
        asked.push([massMg, size.um]);
        return 1_250;
      },
    });
    // Board of 4 mm: two walls beside, four flaps above and below.
    expect(asked).toEqual([[cost.massMg, [12 * IN + 8_000, 12 * IN + 8_000, 12 * IN + 16_000]]]);
    expect(cost.postageValue).toBe(12_500_000);
    expect(cost.totalValue).toBeCloseTo(cost.fillValue + cost.tapeValue + 12_500_000, 6);
  });

  it("never falls in fill, tape or mass where the carton grows", () => {
    fc.assert(
      fc.property(fc.integer({ min: 8, max: 30 }), fc.integer({ min: 0, max: 20 }), (inches, more) => {
        const small = cartonCost(eightCube, cube("small", inches, 0), terms);
        const large = cartonCost(eightCube, cube("large", inches + more, 0), terms);
        expect(large.fillValue).toBeGreaterThanOrEqual(small.fillValue);
        expect(large.tapeUm).toBeGreaterThanOrEqual(small.tapeUm);
        expect(large.massMg).toBeGreaterThanOrEqual(small.massMg);
      }),
    );
  });

  it("refuses a load that takes more than the carton", () => {
    expect(() => cartonCost(eightCube, cube("6", 6, 0), terms)).toThrow(RangeError);
  });
});
