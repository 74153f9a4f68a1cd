import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { amount, amountOfUnits, unitsOf } from "#lib/units/amount";
import { amountAsTyped, formatAmount, formatEstimate, parseAmount } from "#lib/units/amount-text";
import { USE_UNITS } from "#lib/units/use-unit";

describe("formatAmount", () => {
  it("shows a third with its sign", () => {
    expect(formatAmount(amount(16000), "sheet")).toBe("1⅓ sheets");
  });

  it("shows a quarter of a foot", () => {
    expect(formatAmount(amountOfUnits(7.25), "foot")).toBe("7¼ ft");
  });

  it("shows whole sheets", () => {
    expect(formatAmount(amountOfUnits(174), "sheet")).toBe("174 sheets");
  });

  it("shows no word behind what is counted by itself", () => {
    expect(formatAmount(amountOfUnits(9), "each")).toBe("9");
  });

  it("takes the singular for half a piece", () => {
    expect(formatAmount(amountOfUnits(0.5), "piece")).toBe("½ piece");
  });

  it("takes the plural for none", () => {
    expect(formatAmount(amount(0), "sheet")).toBe("0 sheets");
  });

  it("shows an eighth exactly in a large amount", () => {
    expect(formatAmount(amountOfUnits(40.125), "square-foot")).toBe("40⅛ sq ft");
  });

  it("rounds a reckoned large amount to a whole", () => {
    expect(formatAmount(amountOfUnits(71.01), "foot")).toBe("71 ft");
  });

  it("rounds a reckoned small amount to a tenth", () => {
    expect(formatAmount(amountOfUnits(3.28), "metre")).toBe("3.3 m");
  });

  it("takes the singular where rounding comes to one", () => {
    expect(formatAmount(amountOfUnits(1.01), "sheet")).toBe("1 sheet");
  });

  it("does not show a trace as nothing", () => {
    expect(formatAmount(amount(1), "foot")).toBe("0.00008 ft");
  });

  it("shows stock below zero with a minus sign", () => {
    expect(formatAmount(amountOfUnits(-2.5), "sheet")).toBe("−2½ sheets");
  });

  it.each([
    [999, "999 sheets"],
    [1_000, "1,000 sheets"],
    [1_120, "1,120 sheets"],
    [12_345_678, "12,345,678 sheets"],
    [-1_120, "−1,120 sheets"],
    [1_120.125, "1,120⅛ sheets"],
    [1_120.01, "1,120 sheets"],
  ])("groups thousands: %s", (units, words) => {
    expect(formatAmount(amountOfUnits(units), "sheet")).toBe(words);
  });
});

describe("formatEstimate", () => {
  // A week's use: 5,087 pieces in 8 weeks are 635⅞ a week, which no seller can know to an eighth.
  it.each([
    [5_087 / 8, "636 pieces"],
    [20, "20 pieces"],
    [20.125, "20 pieces"],
    [20.5, "21 pieces"],
    [-20.75, "−21 pieces"],
    [1_119.75, "1,120 pieces"],
  ])("shows %s whole", (units, words) => {
    expect(formatEstimate(amountOfUnits(units), "piece")).toBe(words);
  });

  it.each([
    [19.875, "19⅞ pieces"],
    [7.1, "7.1 pieces"],
    [0.5, "½ piece"],
    [0, "0 pieces"],
  ])("shows %s, which is below 20, as an amount", (units, words) => {
    expect(formatEstimate(amountOfUnits(units), "piece")).toBe(words);
  });
});

describe("amountAsTyped", () => {
  it.each([
    [1_120, "sheet", "1120 sheets"],
    [57.15, "metre", "57.15 m"],
    [1 / 3, "sheet", "⅓ sheet"],
    [9, "each", "9"],
  ] as const)("writes %s of a %s as a person would type it", (units, unit, words) => {
    expect(amountAsTyped(amountOfUnits(units), unit)).toBe(words);
  });

  it("is read back as the very same amount, by any shop", () => {
    const parts = fc.integer({ min: 0, max: 10_000 * 12_000 });
    const measures = fc.constantFrom("imperial", "metric");
    fc.assert(
      fc.property(parts, fc.constantFrom(...USE_UNITS), measures, (value, unit, of) => {
        expect(parseAmount(amountAsTyped(amount(value), unit), unit, of)).toMatchObject({ amount: value });
      }),
    );
  });
});

describe("parseAmount", () => {
  it("converts inches to feet exactly, and keeps what was typed", () => {
    expect(parseAmount("90 in", "foot", "imperial")).toEqual({
      kind: "amount",
      amount: 90000,
      typedValue: "90",
      typedUnit: "in",
    });
  });

  it.each([
    ["1 1/3", 16000],
    ["1⅓", 16000],
    ["1 ⅓", 16000],
    ["1-1/3 sheets", 16000],
    ["⅔", 8000],
    ["1/2 sheet", 6000],
    ["0.5", 6000],
    [".5", 6000],
    ["2,5", 30000],
    ["0,125", 1500],
    ["1,000", 12_000_000],
    ["1,120⅛", 13_441_500],
    ["1,120 ⅛ sheets", 13_441_500],
    ["1,234.5", 14_814_000],
    ["0", 0],
    ["174 Sheets", 2_088_000],
  ])("reads %s as sheets", (text, parts) => {
    expect(parseAmount(text, "sheet", "imperial")).toMatchObject({ kind: "amount", amount: parts });
  });

  it.each([
    ["3 ft", "foot", 36000],
    ["3'", "foot", 36000],
    ["2 ft 3 in", "foot", 27000],
    [`5' 6"`, "foot", 66000],
    ["1 yd", "foot", 36000],
    ["30.48 cm", "foot", 12000],
    ["1 m", "metre", 12000],
    ["50 cm", "metre", 6000],
    ["144 sq in", "square-foot", 12000],
    ["1 ft²", "square-foot", 12000],
    ["2 m2", "square-metre", 24000],
    ["4 pieces", "piece", 48000],
    ["4 pcs", "each", 48000],
    ["3 strips", "strip", 36000],
  ] as const)("reads %s for a supply used by the %s", (text, unit, parts) => {
    expect(parseAmount(text, unit, "imperial")).toMatchObject({ kind: "amount", amount: parts });
  });

  it("rounds a metre to the nearest 1/12,000 foot", () => {
    expect(parseAmount("1 m", "foot", "metric")).toMatchObject({ amount: Math.round((12000 * 1) / 0.3048) });
  });

  it("keeps a compound as it was typed", () => {
    expect(parseAmount("2 ft 3 in", "foot", "imperial")).toMatchObject({
      typedValue: "2 ft 3 in",
      typedUnit: "",
    });
  });

  it("puts the use unit behind a number alone", () => {
    expect(parseAmount("1⅓", "sheet", "metric")).toMatchObject({ typedValue: "1⅓", typedUnit: "sheets" });
  });

  it.each([
    "",
    "abc",
    "1/0",
    "-3",
    "3 ft",
    "1.2.3",
    "1 2",
    "3 sheets 2",
    "99999999999999999999",
    "constructor",
    "2 constructor",
    "1,12⅛",
    ",⅛",
    "2,5½",
  ])("does not read %j as sheets", (text) => {
    expect(parseAmount(text, "sheet", "imperial")).toEqual({ kind: "unreadable", text });
  });

  it("does not guess a comma before three digits where commas are decimal", () => {
    expect(parseAmount("1,000", "sheet", "metric")).toEqual({ kind: "unreadable", text: "1,000" });
    expect(parseAmount("1,120⅛", "sheet", "metric")).toEqual({ kind: "unreadable", text: "1,120⅛" });
  });

  it("gives back what was typed, and converts at the precision typed", () => {
    const decimals = fc.tuple(fc.integer({ min: 0, max: 99_999 }), fc.integer({ min: 0, max: 4 }));
    const words = fc.constantFrom(["in", 25.4], ["ft", 304.8], ["cm", 10], ["m", 1000] as const);
    fc.assert(
      fc.property(decimals, words, ([digits, places], [word, millimetres]) => {
        const typedValue = (digits / 10 ** places).toFixed(places);
        const read = parseAmount(`${typedValue} ${word}`, "foot", "imperial");
        const feet = (Number(typedValue) * Number(millimetres)) / 304.8;
        expect(read).toMatchObject({ kind: "amount", typedValue, typedUnit: word });
        expect(read.kind === "amount" && Math.abs(unitsOf(read.amount) - feet)).toBeLessThanOrEqual(
          0.5001 / 12000,
        );
      }),
    );
  });

  it("reads back what formatAmount shows, where that is a small fraction", () => {
    const eighths = fc.integer({ min: 0, max: 40_000 }).map((count) => amount(count * 1500));
    const thirds = fc.integer({ min: 0, max: 40_000 }).map((count) => amount(count * 4000));
    fc.assert(
      fc.property(fc.oneof(eighths, thirds), fc.constantFrom(...USE_UNITS), (value, unit) => {
        expect(parseAmount(formatAmount(value, unit), unit, "imperial")).toMatchObject({ amount: value });
      }),
    );
  });

  it("answers any text with a reading or the text", () => {
    fc.assert(
      fc.property(fc.string(), fc.constantFrom(...USE_UNITS), (text, unit) => {
        const read = parseAmount(text, unit, "metric");
        expect(read.kind === "amount" ? Number.isSafeInteger(read.amount) : read.text === text).toBe(true);
      }),
    );
  });
});
