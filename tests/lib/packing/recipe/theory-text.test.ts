import { describe, expect, it } from "vitest";
import { lengthInTheory, volumeInTheory } from "#lib/packing/recipe/theory-text";

describe("lengthInTheory", () => {
  it.each([
    [828_804, "imperial", "32.6 in"],
    [828_804, "metric", "82.9 cm"],
    [4762.5, "imperial", "0.19 in"],
    [1_905_000, "imperial", "75 in"],
  ] as const)("of %s micrometres in %s measures is %s", (um, measures, text) => {
    expect(lengthInTheory(um, measures)).toBe(text);
  });
});

describe("volumeInTheory", () => {
  it("is in whole cubic inches or tenths of a litre", () => {
    expect(volumeInTheory(19_926.67, "imperial")).toBe("1216 cu in");
    expect(volumeInTheory(19_926.67, "metric")).toBe("19.9 l");
  });
});
