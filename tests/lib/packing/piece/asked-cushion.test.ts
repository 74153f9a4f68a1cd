import { describe, expect, it } from "vitest";
import { USUAL_HABITS } from "#lib/packing/habits";
import { askedCushion } from "#lib/packing/piece/asked-cushion";
import { inches } from "../bench-shop";

// Common practice, no source.
describe("askedCushion", () => {
  it.each([
    ["usual", 370_000, 2],
    ["usual", null, 2],
    ["usual", 2_000_000, 3],
    ["thin", 40_000, 3],
    ["sturdy", 2_300_000, 1],
  ] as const)("of a piece that is %s and weighs %s mg is %s in", (frailty, massMg, wanted) => {
    expect(askedCushion({ frailty, massMg }, USUAL_HABITS)).toBe(inches(wanted));
  });

  it("does not shrink for a heavy piece where a shop gives thin ones less", () => {
    const habits = { ...USUAL_HABITS, cushionUm: { sturdy: 1, usual: 5, thin: 3 } };
    expect(askedCushion({ frailty: "usual", massMg: 9_000_000 }, habits)).toBe(5);
  });
});
