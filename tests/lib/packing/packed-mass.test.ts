import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { packedMass } from "#lib/packing/packed-mass";
import { amount, amountFraction } from "#lib/units/amount";

const mugs = { itemTypeId: "mug", pieces: 2, massMg: 370000 };

describe("packedMass", () => {
  it("adds two mugs and their carton", () => {
    const supplyMasses = new Map([["cube-8", 197000]]);
    expect(packedMass({ pieces: [mugs], lines: [], cartons: ["cube-8"], supplyMasses })).toEqual({
      mg: 937000,
      unknown: [],
    });
  });

  it("rounds the whole parcel once, not each line", () => {
    const third = { supplyId: "tissue", amount: amountFraction(1, 3) };
    const supplyMasses = new Map([["tissue", 6580]]);
    const lines = [third, third, third];
    expect(packedMass({ pieces: [], lines, cartons: [], supplyMasses }).mg).toBe(6580);
  });

  it("names what was never weighed, once, and leaves it out", () => {
    const line = { supplyId: "gift-wrap", amount: amount(12000) };
    const parcel = {
      pieces: [mugs, { itemTypeId: "vase", pieces: 1, massMg: null }],
      lines: [line, line],
      cartons: ["odd"],
      supplyMasses: new Map([["gift-wrap", null]]),
    };
    expect(packedMass(parcel)).toEqual({ mg: 740000, unknown: ["vase", "gift-wrap", "odd"] });
  });

  it("does not ask for the mass of a supply that is not used", () => {
    const lines = [{ supplyId: "gift-wrap", amount: amount(0) }];
    expect(packedMass({ pieces: [], lines, cartons: [], supplyMasses: new Map() })).toEqual({
      mg: 0,
      unknown: [],
    });
  });

  it("refuses a mass below zero", () => {
    const parcel = { pieces: [{ ...mugs, massMg: -1 }], lines: [], cartons: [], supplyMasses: new Map() };
    expect(() => packedMass(parcel)).toThrow(RangeError);
  });

  it("counts a double box twice", () => {
    const supplyMasses = new Map([["cube-8", 197000]]);
    const parcel = { pieces: [], lines: [], cartons: ["cube-8", "cube-8"], supplyMasses };
    expect(packedMass(parcel).mg).toBe(394000);
  });

  it("weighs two parcels together as much as apart, but for the rounding", () => {
    const lines = fc.array(
      fc.record({ supplyId: fc.constantFrom("tissue", "paper"), amount: fc.nat(600_000).map(amount) }),
      { maxLength: 10 },
    );
    const supplyMasses = new Map([
      ["tissue", 6580],
      ["paper", 27216],
    ]);
    const massOf = (list: { supplyId: string; amount: ReturnType<typeof amount> }[]) =>
      packedMass({ pieces: [], lines: list, cartons: [], supplyMasses }).mg;
    fc.assert(
      fc.property(lines, lines, (one, other) => {
        expect(Math.abs(massOf([...one, ...other]) - massOf(one) - massOf(other))).toBeLessThanOrEqual(1);
      }),
    );
  });
});
