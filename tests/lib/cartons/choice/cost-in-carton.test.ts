import { describe, expect, it } from "vitest";
import { costInCarton } from "#lib/cartons/choice/cost-in-carton";
import { cartonCost } from "#lib/cartons/cost/carton-cost";
import { CUBIC_INCH_ML, carton, inches, MUG, MUG_TERMS } from "./mug-bench";

const cube8 = carton("cube-8", [8, 8, 8], 80);

describe("what a load costs in a carton that may be too small", () => {
  it("is the carton's cost where there is room, and nothing where there is not", () => {
    expect(costInCarton(MUG, cube8, MUG_TERMS)).toEqual(cartonCost(MUG, cube8, MUG_TERMS));
    expect(costInCarton(MUG, carton("cube-5", [5, 5, 5], 10), MUG_TERMS)).toBeNull();
  });

  it("has no void where the load fills the carton, a last digit over it or not", () => {
    const pieces = [{ block: inches(8, 8, 8), upright: true }];
    for (const over of [1, 1 + 1e-12]) {
      const brim = { pieces, ml: 512 * CUBIC_INCH_ML * over, massMg: 1 };
      expect(costInCarton(brim, cube8, MUG_TERMS)?.voidMl).toBeCloseTo(0, 6);
    }
  });
});
