import { describe, expect, it } from "vitest";
import { measureWords, typedMeasure } from "#lib/postage/typed-measure";

describe("a measure as typed", () => {
  it("keeps its digits and its unit", () => {
    const measure = typedMeasure(" 15.999 ", "oz", "imperial");
    expect(measure).toEqual({
      text: "15.999",
      unit: "oz",
      value: { numerator: 15_999n, denominator: 1_000n },
    });
    expect(measure === null ? null : measureWords(measure)).toBe("15.999 oz");
  });

  it("reads a decimal comma, and a fraction", () => {
    expect(typedMeasure("0,5", "kg", "metric")?.value).toEqual({ numerator: 5n, denominator: 10n });
    expect(typedMeasure("12 1/16", "in", "imperial")?.value).toEqual({ numerator: 193n, denominator: 16n });
  });

  it("is null for what is no number", () => {
    expect(typedMeasure("a pound", "lb", "imperial")).toBeNull();
    expect(typedMeasure("-1", "lb", "imperial")).toBeNull();
  });
});
