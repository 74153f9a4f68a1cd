import { describe, expect, it } from "vitest";
import { pileByWeight } from "#lib/packing/pile-by-weight";
import { unitsOf } from "#lib/units/amount";

describe("pileByWeight", () => {
  it("finds 233 sheets in 14 lb", () => {
    expect(unitsOf(pileByWeight({ grossMg: 6350293, wrapperMg: 0, massMg: 27216 }))).toBeCloseTo(233.3, 1);
  });

  it("leaves the wrapper out", () => {
    expect(pileByWeight({ grossMg: 27316, wrapperMg: 100, massMg: 27216 })).toBe(12000);
  });

  it("refuses a pile lighter than its wrapper", () => {
    expect(() => pileByWeight({ grossMg: 99, wrapperMg: 100, massMg: 27216 })).toThrow(
      "pileByWeight requires a pile that weighs at least its wrapper of 100 mg, got 99",
    );
  });
});
