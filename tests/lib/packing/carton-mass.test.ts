import { describe, expect, it } from "vitest";
import { cartonMass } from "#lib/packing/carton-mass";

const cube8 = { lengthUm: 203200, widthUm: 203200, heightUm: 203200 };

describe("cartonMass", () => {
  it("guesses 197 g for a cube of 8 in", () => {
    expect(Math.round(cartonMass(cube8) / 1000)).toBe(197);
  });

  it("goes with the board weight", () => {
    expect(cartonMass(cube8, 0.23)).toBeCloseTo(cartonMass(cube8, 0.115) * 2, -1);
  });

  it("refuses a board without weight", () => {
    expect(() => cartonMass(cube8, 0)).toThrow("cartonMass requires a board weight above zero, got 0");
  });
});
