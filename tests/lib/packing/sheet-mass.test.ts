import { describe, expect, it } from "vitest";
import { gramsPerSquareMetre, sheetMass } from "#lib/packing/sheet-mass";

describe("gramsPerSquareMetre", () => {
  it("is 48.82 for packing paper of 30 lb", () => {
    expect(gramsPerSquareMetre(30)).toBeCloseTo(48.82, 2);
  });

  it.each([0, -30, Number.NaN])("refuses a basis weight of %s lb", (basis) => {
    expect(() => gramsPerSquareMetre(basis)).toThrow(RangeError);
  });

  it("refuses a basic size without a side", () => {
    expect(() => gramsPerSquareMetre(30, [24, 0])).toThrow(
      "gramsPerSquareMetre requires numbers above zero, got 0",
    );
  });
});

describe("sheetMass", () => {
  it("is 27.216 g for a sheet of 24 x 36 in", () => {
    expect(sheetMass({ lengthUm: 914400, widthUm: 609600, gramsPerSquareMetre: 48.8243 })).toBe(27216);
  });

  it("refuses a sheet without a side", () => {
    expect(() => sheetMass({ lengthUm: 0, widthUm: 609600, gramsPerSquareMetre: 48 })).toThrow(RangeError);
  });
});
