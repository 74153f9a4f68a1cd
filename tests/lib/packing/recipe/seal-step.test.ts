import { describe, expect, it } from "vitest";
import { USUAL_HABITS } from "#lib/packing/habits";
import { sealStep } from "#lib/packing/recipe/seal-step";
import { cartonOf, cartonTape, householdTape, paper } from "../bench-shop";

const cube8 = cartonOf(8, 8, 8);
const seal = (...[supply, habits]: [typeof cartonTape, Parameters<typeof sealStep>[3]]) =>
  sealStep(cube8, "the carton", supply, habits, "imperial");

// Computed from the formula; legs as in the habits.
describe("sealStep", () => {
  it("closes an 8 in carton with an H of 75 in", () => {
    const step = seal(cartonTape, USUAL_HABITS);
    expect([step.theory, step.used, step.per]).toEqual(["75 in", "6¼ ft", "parcel"]);
    expect(step.words).toBe("Close the carton with tape: an H above and below");
  });

  it("follows the pattern and what the shop has used so far", () => {
    expect(seal(cartonTape, { ...USUAL_HABITS, closing: "single" }).theory).toBe("27 in");
    const twice = seal(cartonTape, { ...USUAL_HABITS, tapeFactor: 2 });
    expect([twice.theory, twice.used]).toEqual(["75 in", "12½ ft"]);
    expect(twice.reason).toContain("× 2 as used so far");
  });

  it("refuses tape that has no length", () => {
    expect(() => seal(paper, USUAL_HABITS)).toThrow(RangeError);
    expect(() => seal({ ...householdTape, useUnit: "each" }, USUAL_HABITS)).toThrow(RangeError);
  });
});
