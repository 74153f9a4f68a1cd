import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formatMass, milligrams, parseMass } from "#lib/units/mass";

const massOf = (text: string) => {
  const read = parseMass(text);
  return read.kind === "mass" ? read.mg : read.kind;
};

describe("parseMass", () => {
  it("reads grams and keeps what was typed", () => {
    expect(parseMass("450 g")).toEqual({ kind: "mass", mg: 450000, typed: "450 g" });
  });

  it.each([
    ["1.2 kg", 1_200_000],
    ["1,2 kg", 1_200_000],
    ["2 lb 15 oz", 1_332_428],
    ["2lb15oz", 1_332_428],
    ["2½ lbs", 1_133_981],
    ["15.999 oz", 453_564],
    ["16 oz", 453_592],
    ["1 lb", 453_592],
    ["0 g", 0],
  ])("reads %s (the pound is 453.59237 g by the agreement of 1959)", (text, mg) => {
    expect(massOf(text)).toBe(mg);
  });

  it("asks for the unit where none is understood", () => {
    expect(parseMass("450")).toEqual({ kind: "unreadable", text: "450" });
  });

  it("reads a number alone in ounces or grams, after the measures", () => {
    expect([parseMass("16", "imperial"), parseMass("450", "metric")]).toMatchObject([
      { mg: 453592 },
      { mg: 450000 },
    ]);
  });

  it.each(["", "heavy", "-1 kg", "1 ft", "1 kg 2", "9999999999999999 kg"])("does not read %j", (text) => {
    expect(parseMass(text)).toEqual({ kind: "unreadable", text });
  });
});

describe("formatMass", () => {
  it("shows pounds and ounces", () => {
    expect(formatMass(milligrams(1332428), "imperial")).toBe("2 lb 15 oz");
  });

  it.each([
    [184_272, "6.5 oz"],
    [453_592, "1 lb"],
    [453_564, "15.999 oz"],
    [907_000, "2 lb"],
    [0, "0 oz"],
  ])("shows %s mg as %s", (mg, words) => {
    expect(formatMass(milligrams(mg), "imperial")).toBe(words);
  });

  it.each([
    [1_332_428, "1.33 kg"],
    [6_580, "6.6 g"],
    [450_400, "450 g"],
    [999_600, "999.6 g"],
    [1_000_000, "1 kg"],
    [2_500_000, "2.5 kg"],
  ])("shows %s mg as %s", (mg, words) => {
    expect(formatMass(milligrams(mg), "metric")).toBe(words);
  });

  it("never shows less than a pound as a pound", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 453_591 }), (mg) => {
        expect(formatMass(milligrams(mg), "imperial")).toMatch(/ oz$/);
        expect(Number.parseFloat(formatMass(milligrams(mg), "imperial"))).toBeLessThan(16);
      }),
    );
  });

  it("refuses a mass below zero", () => {
    expect(() => milligrams(-1)).toThrow("milligrams requires a whole number from zero, got -1");
  });

  it("shows a mass to within half an ounce", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 50_000_000 }), (mg) => {
        const off = Number(massOf(formatMass(milligrams(mg), "imperial"))) - mg;
        expect(Math.abs(off)).toBeLessThanOrEqual(28_349.523125 / 2 + 1);
      }),
    );
  });
});
