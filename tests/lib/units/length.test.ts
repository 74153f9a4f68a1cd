import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formatLength, formatSizes, micrometres, parseLength, parseSizes } from "#lib/units/length";

describe("parseLength", () => {
  it("reads inches and keeps what was typed", () => {
    expect(parseLength("12 in", "imperial")).toEqual({ kind: "length", um: 304800, typed: "12 in" });
  });

  it.each([
    ["12", 304_800],
    ['12"', 304_800],
    ["30.5 cm", 305_000],
    ["3/16 in", 4_762],
    ["2 ft 3 in", 685_800],
    ["1 m", 1_000_000],
    ["48 mm", 48_000],
  ])("reads %s, half a micrometre to the even one", (text, um) => {
    expect(parseLength(text, "imperial")).toMatchObject({ um });
  });

  it("reads a number alone in centimetres for metric measures", () => {
    expect(parseLength("30,5", "metric")).toMatchObject({ um: 305_000 });
  });

  it.each(["", "wide", "12 kg", "-1 in", "1 ft 2"])("does not read %j", (text) => {
    expect(parseLength(text, "imperial")).toEqual({ kind: "unreadable", text });
  });

  it("reads back any length typed in hundredths of a millimetre", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 10_000_000 }), (hundredths) => {
        expect(parseLength(`${(hundredths / 100).toFixed(2)} mm`, "metric")).toMatchObject({
          um: hundredths * 10,
        });
      }),
    );
  });
});

describe("formatLength", () => {
  it("shows inches with eighths", () => {
    expect(formatLength(micrometres(241300), "imperial")).toBe("9½ in");
  });

  it.each([
    [305_000, "imperial", "12.01 in"],
    [305_000, "metric", "30.5 cm"],
    [3_200, "metric", "3.2 mm"],
    [0, "metric", "0 cm"],
  ] as const)("shows %s µm in %s measures as %s", (um, measures, words) => {
    expect(formatLength(micrometres(um), measures)).toBe(words);
  });

  it("refuses a length below zero", () => {
    expect(() => micrometres(-1)).toThrow("micrometres requires a whole number from zero, got -1");
  });
});

describe("parseSizes", () => {
  it("reads a carton", () => {
    expect(parseSizes("12 x 9 x 8", "imperial")).toEqual({
      kind: "sizes",
      um: [304800, 228600, 203200],
      typed: "12 x 9 x 8",
    });
  });

  it.each([
    ["12x12x8 in", [304_800, 304_800, 203_200]],
    ["30 × 20 × 10 cm", [300_000, 200_000, 100_000]],
    ["30 cm x 20 cm x 10 cm", [300_000, 200_000, 100_000]],
    ["24 by 36 in", [609_600, 914_400]],
    ["8 1/2 X 11", [215_900, 279_400]],
    ["8½*11", [215_900, 279_400]],
  ])("reads %s", (text, um) => {
    expect(parseSizes(text, "imperial")).toMatchObject({ um });
  });

  it.each(["12", "12 x", "x 9", "1 x 2 x 3 x 4", "big"])("does not read %j", (text) => {
    expect(parseSizes(text, "imperial")).toEqual({ kind: "unreadable", text, hasZero: false });
  });

  it.each(["12 x 0 x 8", "0 x 4 cm", "4 x 0.0"])("says of %j that a size is zero", (text) => {
    expect(parseSizes(text, "imperial")).toEqual({ kind: "unreadable", text, hasZero: true });
  });

  // 4 in are 101.6 mm.
  it("reads each size in the unit behind it", () => {
    expect(parseSizes("4 in x 10 cm", "metric")).toMatchObject({ um: [101_600, 100_000] });
    expect(parseSizes("30 cm x 20 x 10", "imperial")).toMatchObject({ um: [300_000, 200_000, 100_000] });
    expect(parseSizes("10 cm x 4 in x 2", "imperial").kind).toBe("unreadable");
    expect(parseSizes("4 in x 2 x 10 cm", "imperial").kind).toBe("unreadable");
  });
});

describe("formatSizes", () => {
  it("shows a carton as the trade names it", () => {
    expect(formatSizes([304800, 228600, 203200].map(micrometres), "imperial")).toBe("12 × 9 × 8");
  });

  it("is read back by parseSizes", () => {
    const eighths = fc.integer({ min: 1, max: 400 }).map((count) => micrometres(count * 3175));
    fc.assert(
      fc.property(fc.array(eighths, { minLength: 2, maxLength: 3 }), (um) => {
        expect(parseSizes(formatSizes(um, "imperial"), "imperial")).toMatchObject({ um });
      }),
    );
  });
});
