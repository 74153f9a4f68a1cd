import { describe, expect, it } from "vitest";
import { continuedFraction } from "#lib/statistics/continued-fraction";

const one = () => 1;

describe("continued fraction", () => {
  it("of ones is the golden ratio", () => {
    expect(continuedFraction(1, one, one)).toBeCloseTo((1 + Math.sqrt(5)) / 2, 15);
  });

  it("1 + 1 / (2 + 1 / (2 + ...)) is the square root of 2", () => {
    expect(continuedFraction(1, one, () => 2)).toBeCloseTo(Math.SQRT2, 14);
  });

  it("stands a first term of 0: 0 + 4 / (1 + 1 / (3 + 4 / (5 + 9 / (7 + ...)))) is pi (from memory)", () => {
    const pi = continuedFraction(
      0,
      (n) => (n === 1 ? 4 : (n - 1) ** 2),
      (n) => 2 * n - 1,
    );
    expect(pi).toBeCloseTo(Math.PI, 14);
  });

  it("refuses a fraction that never settles", () => {
    expect(() => continuedFraction(1, () => -1, one)).toThrow(RangeError);
  });
});
