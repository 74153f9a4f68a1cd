import { describe, expect, it } from "vitest";
import { USUAL_HABITS } from "#lib/packing/habits";
import { bindStep } from "#lib/packing/recipe/bind-step";
import { cartonTape, householdTape, paper } from "../bench-shop";

const bound = { wraps: 1, guards: 1 };

describe("bindStep", () => {
  it("takes strips, or the length that they are", () => {
    expect(bindStep(bound, householdTape, USUAL_HABITS, "imperial")?.used).toBe("4 strips");
    expect(bindStep(bound, cartonTape, USUAL_HABITS, "imperial")?.used).toBe("1 ft");
  });

  it("counts bands by themselves", () => {
    const bands = { ...householdTape, material: "rubber-band", useUnit: "each" } as const;
    const step = bindStep(bound, bands, USUAL_HABITS, "imperial");
    expect([step?.used, step?.theory]).toEqual(["4", "4 bands"]);
  });

  it("is not there where nothing is bound", () => {
    expect(bindStep({ wraps: 0, guards: 0 }, householdTape, USUAL_HABITS, "imperial")).toBeNull();
  });

  it("refuses sheets", () => {
    expect(() => bindStep(bound, paper, USUAL_HABITS, "imperial")).toThrow(RangeError);
  });
});
