import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { amountByMass } from "#lib/packing/amount-by-mass";

describe("amountByMass", () => {
  it("finds two sheets in twice a sheet's mass", () => {
    expect(amountByMass(54432, 27216)).toBe(24000);
  });

  it("finds nothing in nothing", () => {
    expect(amountByMass(0, 27216)).toBe(0);
  });

  it.each([
    [-1, 27216],
    [0.5, 27216],
    [54432, 0],
    [54432, -1],
  ])("refuses %s mg at %s mg each", (netMg, massMg) => {
    expect(() => amountByMass(netMg, massMg)).toThrow(RangeError);
  });

  it("finds any whole number of sheets exactly", () => {
    fc.assert(
      fc.property(fc.nat(100_000), fc.integer({ min: 1, max: 1_000_000 }), (sheets, massMg) => {
        expect(amountByMass(sheets * massMg, massMg)).toBe(sheets * 12000);
      }),
    );
  });
});
