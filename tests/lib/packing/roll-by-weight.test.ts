import { describe, expect, it } from "vitest";
import { rollByWeight } from "#lib/packing/roll-by-weight";
import { unitsOf } from "#lib/units/amount";

describe("rollByWeight", () => {
  it("finds 129 ft in 600 g of bubble beside its core", () => {
    expect(unitsOf(rollByWeight({ grossMg: 700000, coreMg: 100000, massMg: 4645 }))).toBeCloseTo(129.2, 1);
  });

  it("finds nothing on a bare core", () => {
    expect(rollByWeight({ grossMg: 100000, coreMg: 100000, massMg: 4645 })).toBe(0);
  });

  it("refuses a roll lighter than its core", () => {
    expect(() => rollByWeight({ grossMg: 99999, coreMg: 100000, massMg: 4645 })).toThrow(
      "rollByWeight requires a roll that weighs at least its core of 100000 mg, got 99999",
    );
  });
});
