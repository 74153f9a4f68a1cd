import { describe, expect, it } from "vitest";
import { type Lift, liftingAdvice, recommendedPounds } from "#lib/cartons/strength/lifting";
import { massOf } from "./packed-load";

describe("liftingAdvice", () => {
  it.each([
    ["40 lb", "imperial", "alone"],
    ["40 lb 1 oz", "imperial", "heavy"],
    ["50 lb", "imperial", "heavy"],
    ["50 lb 0.01 oz", "imperial", "help"],
    ["18 kg", "metric", "alone"],
    ["23 kg", "metric", "heavy"],
    ["23.001 kg", "metric", "help"],
  ] as const)("says of %s in %s measures: %s", (weight, measures, advice) => {
    expect(liftingAdvice(massOf(weight), measures)).toBe(advice);
  });
});

// The revised lifting equation: tests/reference. Its bounds are from memory.
describe("recommendedPounds", () => {
  const best: Lift = {
    reachInches: 10,
    heightInches: 30,
    travelInches: 10,
    twistDegrees: 0,
    frequency: 1,
    grip: 1,
  };

  it("is 51 lb at best, and no more for a nearer or shorter lift", () => {
    expect(recommendedPounds(best)).toBeCloseTo(51, 9);
    expect(recommendedPounds({ ...best, reachInches: 5, travelInches: 3 })).toBeCloseTo(51, 9);
  });

  it("is nothing beyond what the equation allows", () => {
    expect(recommendedPounds({ ...best, reachInches: 26 })).toBe(0);
    expect(recommendedPounds({ ...best, twistDegrees: 136 })).toBe(0);
  });

  it("refuses numbers below zero and shares above one", () => {
    expect(() => recommendedPounds({ ...best, heightInches: -1 })).toThrow(RangeError);
    expect(() => recommendedPounds({ ...best, grip: 1.1 })).toThrow(RangeError);
  });
});
