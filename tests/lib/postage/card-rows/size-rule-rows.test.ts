import { describe, expect, it } from "vitest";
import { divisorFromText, divisorText, volumeFromText } from "#lib/postage/card-rows/size-rule-rows";
import { exact } from "../rate-card-fixture";

describe("a divisor", () => {
  it("is read with its pair of units, however the cube is written", () => {
    const inches = { divisor: exact("139"), lengthUnit: "in", massUnit: "lb" };
    for (const text of [
      "139 in³ per lb",
      "139 in3/lb",
      "139 cu in per pound",
      "139 cubic inches per lb",
      "139 in^3 / lb",
    ]) {
      expect(divisorFromText(text, "imperial"), text).toEqual(inches);
    }
    expect(divisorFromText("5000 cm³ per kg", "metric")).toEqual({
      divisor: exact("5000"),
      lengthUnit: "cm",
      massUnit: "kg",
    });
  });

  it("is written so that it is read back", () => {
    const read = divisorFromText("5000 cm3/kg", "metric");
    expect(read === null ? null : divisorText(read)).toBe("5000 cm³ per kg");
  });

  it("needs its units and must be above zero", () => {
    expect(divisorFromText("139", "imperial")).toBeNull();
    expect(divisorFromText("0 in³ per lb", "imperial")).toBeNull();
    expect(divisorFromText("139 in³ per day", "imperial")).toBeNull();
  });
});

describe("a volume", () => {
  it("is read in the unit of the rule only", () => {
    expect(volumeFromText("1,728 cu in", "in", "imperial")).toEqual(exact("1728"));
    expect(volumeFromText("1728 cm³", "in", "imperial")).toBeNull();
    expect(volumeFromText("1728", "in", "imperial")).toBeNull();
  });
});
