import { describe, expect, it } from "vitest";
import { boardGrams, weighedCarton } from "#lib/packing/calibration/weighed-carton";
import { cartonMass } from "#lib/packing/carton-mass";
import { inches } from "../bench-shop";

const cube12 = { lengthUm: inches(12), widthUm: inches(12), heightUm: inches(12) };

describe("weighedCarton", () => {
  it("finds the board weight again that a carton was reckoned with", () => {
    const board = weighedCarton(cube12, cartonMass(cube12, 0.13), 0.115);
    expect(board.kind).toBe("plausible");
    expect(board.value).toBeCloseTo(0.13, 6);
  });

  it("doubts ounces read as pounds", () => {
    expect(weighedCarton(cube12, 16 * 435_000, 0.115)).toMatchObject({ kind: "doubtful" });
  });

  it("refuses a carton without mass", () => {
    expect(() => weighedCarton(cube12, 0, 0.115)).toThrow(RangeError);
  });
});

describe("boardGrams", () => {
  // Computed: 0.115 x 453.59237 g / 0.09290304 m².
  it("is 561 grams a square metre for 0.115 lb a square foot", () => {
    expect(boardGrams(0.115)).toBeCloseTo(561.5, 1);
  });

  it("refuses board without weight", () => {
    expect(() => boardGrams(0)).toThrow(RangeError);
  });
});
