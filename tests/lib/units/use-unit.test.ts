import { describe, expect, it } from "vitest";
import { isUseUnit, USE_UNITS, unitWord } from "#lib/units/use-unit";

describe("use unit", () => {
  it("takes the plural for two", () => {
    expect(unitWord("sheet", 2)).toBe("sheets");
  });

  it.each([0.5, 1, -1])("takes the singular for %s", (count) => {
    expect(unitWord("sheet", count)).toBe("sheet");
  });

  it.each([0, 1.5, -2])("takes the plural for %s", (count) => {
    expect(unitWord("sheet", count)).toBe("sheets");
  });

  it("has no word for each", () => {
    expect(unitWord("each", 3)).toBe("");
  });

  it("knows each unit that it lists", () => {
    expect(USE_UNITS.every(isUseUnit)).toBe(true);
  });

  it("does not take a property of objects for a unit", () => {
    expect(isUseUnit("toString")).toBe(false);
  });
});
