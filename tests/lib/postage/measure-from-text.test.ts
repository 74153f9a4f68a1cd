import { describe, expect, it } from "vitest";
import { lengthFromText, lengthUnitOf, massFromText, massUnitOf } from "#lib/postage/measure-from-text";
import { typed } from "./rate-card-fixture";

describe("measures of a rate card", () => {
  it("keep number and unit as they stand in the list", () => {
    expect(massFromText("15.999 oz", "imperial")).toEqual(typed("15.999", "oz"));
    expect(massFromText("2 Kilos", "metric")).toEqual(typed("2", "kg"));
    expect(lengthFromText("4 1/2 inches", "imperial")).toEqual(typed("4 1/2", "in"));
    expect(lengthFromText("76,5cm", "metric")?.value).toEqual(typed("76.5", "cm").value);
  });

  it("need a unit of their own kind", () => {
    expect([
      massFromText("8", "imperial"),
      massFromText("8 in", "imperial"),
      lengthFromText("8 oz", "imperial"),
    ]).toEqual([null, null, null]);
    expect([massUnitOf("LBS"), massUnitOf("stone"), lengthUnitOf("Inch"), lengthUnitOf("ft")]).toEqual([
      "lb",
      null,
      "in",
      null,
    ]);
  });
});
