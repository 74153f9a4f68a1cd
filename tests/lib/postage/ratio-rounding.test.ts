import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { compareRatios, ratio, ratioNumber, ratioProduct, ratioQuotient, ratioSum } from "#lib/postage/ratio";
import { coveringParts, type Rounding, rounded, roundingWords } from "#lib/postage/ratio-rounding";
import { exact } from "./rate-card-fixture";

const whole = (kind: "up" | "nearest" | "down"): Rounding => ({ kind, to: ratio(1n) });

describe("rounding of sides and weights", () => {
  it("goes up where anything is left over, and leaves whole numbers alone", () => {
    expect(ratioNumber(rounded(exact("12.0001"), whole("up")))).toBe(13);
    expect(ratioNumber(rounded(exact("12.0"), whole("up")))).toBe(12);
  });

  it("takes a half up to the nearest, and less than a half down", () => {
    expect(ratioNumber(rounded(exact("16.5"), whole("nearest")))).toBe(17);
    expect(ratioNumber(rounded(exact("16.4999"), whole("nearest")))).toBe(16);
  });

  it("cuts down to a quarter", () => {
    expect(ratioNumber(rounded(exact("9.9"), { kind: "down", to: exact("1/4") }))).toBe(9.75);
  });

  it("leaves a value as it is where nothing is rounded", () => {
    expect(rounded(exact("9.9"), { kind: "none" })).toEqual(exact("9.9"));
  });

  it("refuses values below zero and multiples of zero", () => {
    expect(() => rounded(ratio(-1n), whole("up"))).toThrow(RangeError);
    expect(() => rounded(ratio(1n), { kind: "up", to: ratio(0n) })).toThrow(RangeError);
  });

  it("ends on a multiple less than one multiple away", () => {
    const parts = fc.tuple(fc.bigInt(0n, 10_000n), fc.bigInt(1n, 997n));
    const kinds = fc.constantFrom("up" as const, "nearest" as const, "down" as const);
    fc.assert(
      fc.property(parts, fc.bigInt(1n, 50n), kinds, ([numerator, denominator], step, kind) => {
        const [value, to] = [ratio(numerator, denominator), ratio(step, 8n)];
        const result = rounded(value, { kind, to });
        const { numerator: top, denominator: bottom } = ratioQuotient(result, to);
        expect(top % bottom).toBe(0n);
        const away = ratioSum(result, ratioProduct(ratio(-1n), value));
        expect(compareRatios(away, to)).toBe(-1);
        expect(compareRatios(away, ratioProduct(ratio(-1n), to))).toBe(1);
        if (kind === "up") expect(compareRatios(away, ratio(0n))).not.toBe(-1);
        if (kind === "down") expect(compareRatios(away, ratio(0n))).not.toBe(1);
      }),
    );
  });

  it("counts the parts that cover a value", () => {
    expect(coveringParts(exact("2.2"), ratio(1n))).toBe(3);
    expect(coveringParts(exact("2"), ratio(1n))).toBe(2);
    expect(coveringParts(exact("0"), ratio(1n))).toBe(0);
  });

  it("is said in words", () => {
    expect(roundingWords(whole("up"), "in")).toBe("up to a whole in");
    expect(roundingWords(whole("nearest"), "in")).toBe("to the nearest whole in");
    expect(roundingWords({ kind: "down", to: exact("1/4") }, "in")).toBe("down to a multiple of 0.25 in");
    expect(roundingWords({ kind: "none" }, "cm")).toBe("as it is");
  });
});
