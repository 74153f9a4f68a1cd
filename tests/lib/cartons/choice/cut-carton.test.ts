import { describe, expect, it } from "vitest";
import { cutCarton } from "#lib/cartons/choice/cut-carton";
import { cartonMass } from "#lib/packing/carton-mass";
import { carton, IN, inches } from "./mug-bench";

const cube10 = carton("cube-10", [10, 10, 10], 100);

describe("a carton cut down", () => {
  it("weighs what a carton of that size weighs by its blank, and costs what it cost", () => {
    const cut = cutCarton(cube10, 6 * IN);
    expect(cut.massMg).toBeCloseTo(cartonMass(inches(10, 10, 6)), -1);
    expect([cut.value, cut.inside]).toEqual([cube10.value, inches(10, 10, 6)]);
  });

  // Blank of a board maker's formula: 42 in x (10 + 10) in against 42 x (10 + 6): a fifth is trimmed off.
  it("loses of its own weighed mass the strip that is trimmed off", () => {
    expect(cutCarton({ ...cube10, massMg: 400_000 }, 6 * IN).massMg).toBeCloseTo(320_000, 6);
  });
});
