import { describe, expect, it } from "vitest";
import { unitLength } from "#lib/packing/unit-length";
import { cartonTape, householdTape, paper, smallBubble } from "./bench-shop";

describe("unitLength", () => {
  it("is a foot or a metre where tape goes by its length", () => {
    expect(unitLength(cartonTape, 76_200)).toBe(304_800);
    expect(unitLength({ ...cartonTape, useUnit: "metre" }, 76_200)).toBe(1_000_000);
  });

  it("is the strip where tape goes by the strip, and the torn piece where it tears", () => {
    expect(unitLength(householdTape, 76_200)).toBe(76_200);
    expect(unitLength(smallBubble, 76_200)).toBe(304_800);
  });

  it("is counted by itself for bands", () => {
    expect(unitLength({ ...householdTape, useUnit: "each" }, 76_200)).toBe("each");
  });

  it("is unknown for sheets and areas", () => {
    expect(unitLength(paper, 76_200)).toBeNull();
    expect(unitLength({ ...cartonTape, useUnit: "square-foot" }, 76_200)).toBeNull();
  });
});
