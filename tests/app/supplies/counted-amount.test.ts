import { describe, expect, it } from "vitest";
import { countedAmount } from "#app/supplies/count/counted-amount.ts";
import { amount, amountOfUnits, unitsOf } from "#lib/units/amount";
import { PLAIN_SUPPLY } from "#prisma/records/plain-supply";
import type { Supply } from "#prisma/records/supplies";

/** 175 ft, 18.5 in across when full, on a 3 in core. */
const BUBBLE: Supply = {
  ...PLAIN_SUPPLY,
  id: "small-bubble",
  name: "Small bubble",
  kind: "bubble",
  useUnit: "foot",
  countUnit: "roll of 175 ft",
  countAmount: amountOfUnits(175),
  coreUm: 76_200,
  fullUm: 469_900,
  fullAmount: amountOfUnits(175),
};

const PAPER: Supply = {
  ...PLAIN_SUPPLY,
  id: "paper",
  name: "Packing paper",
  kind: "paper",
  useUnit: "sheet",
  massMg: 27_200,
  sheetNm: 76_200,
};

function units(
  method: "number" | "roll" | "height" | "weight",
  typed: string,
  supply: Supply,
): number | string {
  const counted = countedAmount({ method, typed }, supply, null, "imperial");
  return counted.kind === "amount" ? unitsOf(counted.amount) : counted.problem;
}

describe("counted amount", () => {
  it("reads a mixed fraction exactly", () => {
    expect(countedAmount({ method: "number", typed: "1 1/3" }, PAPER, null, "imperial")).toMatchObject({
      amount: 16_000,
    });
  });

  it("says how far a ruler may be off: 12 in across, misread by 1/8 in, is 69 to 72 ft", () => {
    // Computed from the ring's area: (12.125² - 3²) / (18.5² - 3²) of 175 ft.
    const counted = countedAmount({ method: "roll", typed: "12 in" }, BUBBLE, null, "imperial");
    const range = counted.kind === "amount" ? counted.range : undefined;
    expect(unitsOf(range?.low ?? amount(0))).toBeCloseTo((175 * (11.875 ** 2 - 9)) / (18.5 ** 2 - 9), 3);
    expect(unitsOf(range?.high ?? amount(0))).toBeCloseTo((175 * (12.125 ** 2 - 9)) / (18.5 ** 2 - 9), 3);
    const whole = countedAmount({ method: "roll", typed: "2 full" }, BUBBLE, null, "imperial");
    expect(whole).not.toHaveProperty("range");
  });

  it("reads another unit of length", () => {
    expect(units("number", "90 in", BUBBLE)).toBe(7.5);
  });

  it("reads full rolls as rolls where a number was asked for", () => {
    expect(units("number", "1 full", BUBBLE)).toBe(175);
    expect(units("number", "2 full", PAPER)).toContain("can’t be read");
  });

  it("reads counted units by their word", () => {
    expect(units("number", "1 1/2 rolls", BUBBLE)).toBe(262.5);
  });

  // Common practice, no source: area of the ring that is left over the area of the full ring.
  it.each([
    ["16 in", 130],
    ["12 in", 71],
    ["8 in", 29],
    ["6 in", 14],
  ])("finds what is left on a part roll %s across", (typed, feet) => {
    expect(Math.round(Number(units("roll", typed, BUBBLE)))).toBe(feet);
  });

  it("adds several part rolls and full ones", () => {
    const twelve = Number(units("roll", "12 in", BUBBLE));
    const eight = Number(units("roll", "8 in", BUBBLE));
    expect(units("roll", "2 full + 12 in + 8 in", BUBBLE)).toBeCloseTo(350 + twelve + eight, 9);
  });

  it("says which diameters a roll can have when one lies outside", () => {
    expect(units("roll", "20 in", BUBBLE)).toContain("between 3 in (the bare core) and 18½ in (full)");
  });

  // A ream of 500 sheets of 24 × 30 newsprint that is 1.5 in high: from memory, 0.003 in a sheet.
  it("finds the sheets of a pressed pile from its height", () => {
    expect(units("height", "0.9 in", PAPER)).toBe(300);
  });

  // 48.8 gsm (30 lb newsprint), 24 × 36 in: 27.2 g a sheet; 6.35 kg are 233 of them. Common practice, no source.
  it("finds the sheets of a pile from its weight", () => {
    expect(Math.round(Number(units("weight", "6.35 kg", PAPER)))).toBe(233);
  });

  it("lets the book's figure stand when it looks right", () => {
    const counted = countedAmount({ method: "looks-right", typed: null }, PAPER, amount(-4_000), "imperial");
    expect(counted).toEqual({ kind: "amount", amount: -4_000, typed: "looks right" });
  });

  it("has no figure that looks right before the first count", () => {
    expect(countedAmount({ method: "looks-right", typed: null }, PAPER, null, "imperial").kind).toBe(
      "unreadable",
    );
  });

  it("names what it could not read and how to write it", () => {
    expect(units("number", "some", PAPER)).toBe(
      "“some” can’t be read. Write an amount like 174, 1 1/3 or 3 ft.",
    );
  });
});
