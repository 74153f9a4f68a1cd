import { describe, expect, it } from "vitest";
import { measureParts, measureSum } from "#lib/units/measure-text";

describe("measureParts", () => {
  it("splits feet and inches", () => {
    expect(measureParts("2 ft 3 in", "imperial")?.map((part) => part.unit)).toEqual(["ft", "in"]);
  });

  it("keeps a unit of two words together", () => {
    expect(measureParts("3 Sq  Ft.", "imperial")?.map((part) => part.unit)).toEqual(["sq ft"]);
  });

  it("leaves the unit of a lone number empty", () => {
    expect(measureParts("12", "imperial")).toEqual([
      { value: { numerator: 12n, denominator: 1n }, valueText: "12", unit: "" },
    ]);
  });

  it("does not read words before a number", () => {
    expect(measureParts("about 3 ft", "imperial")).toBeNull();
  });
});

describe("measureSum", () => {
  const inches = new Map([["in", 25400n]]);
  const half = { value: { numerator: 1n, denominator: 2n }, valueText: "1/2", unit: "in" };

  it("adds in the smallest unit without rounding", () => {
    expect(measureSum([half], inches, null)).toEqual({ numerator: 25400n, denominator: 2n });
  });

  it("asks for a unit where none is understood", () => {
    expect(measureSum([{ ...half, unit: "" }], inches, null)).toBeNull();
  });

  it("does not understand a missing unit behind a second number", () => {
    expect(measureSum([half, { ...half, unit: "" }], inches, "in")).toBeNull();
  });
});
