import { describe, expect, it } from "vitest";
import { cartonTape } from "#lib/packing/carton-tape";

describe("cartonTape", () => {
  it("is 75 in for an H on a carton 8 in square", () => {
    expect(cartonTape({ lengthUm: 203200, widthUm: 203200, pattern: "h" })).toBe(1905000);
  });

  it("follows the legs that the seller sets", () => {
    const carton = { lengthUm: 203200, widthUm: 203200, pattern: "single" } as const;
    expect(cartonTape(carton, { centreUm: 0, edgeUm: 0 })).toBe(406400);
  });

  it("takes half as much again with the bottom doubled", () => {
    const carton = { lengthUm: 203200, widthUm: 203200 };
    expect(cartonTape({ ...carton, pattern: "doubled-bottom" }) * 2).toBe(
      cartonTape({ ...carton, pattern: "single" }) * 3,
    );
  });

  it("refuses a carton without a side", () => {
    expect(() => cartonTape({ lengthUm: 0, widthUm: 203200, pattern: "h" })).toThrow(RangeError);
  });

  it("refuses a leg below zero", () => {
    const carton = { lengthUm: 203200, widthUm: 203200, pattern: "single" } as const;
    expect(() => cartonTape(carton, { centreUm: -1, edgeUm: 0 })).toThrow(RangeError);
  });
});
