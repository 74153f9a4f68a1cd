import { describe, expect, it } from "vitest";
import { normalDensity } from "#lib/statistics/normal-density";

describe("normal density", () => {
  it("normalDensity(1) is the example of its docstring", () => {
    expect(normalDensity(1)).toBeCloseTo(0.24197072451914337, 15);
  });

  it("covers an area of 1", () => {
    const width = 0.1;
    const area = Array.from({ length: 200 }, (_, step) => width * normalDensity(-10 + width * (step + 0.5)));
    expect(area.reduce((sum, part) => sum + part, 0)).toBeCloseTo(1, 13);
  });

  it("is nothing at the far ends and refuses what is no number", () => {
    expect(normalDensity(Infinity)).toBe(0);
    expect(normalDensity(-40)).toBe(0);
    expect(() => normalDensity(Number.NaN)).toThrow(RangeError);
  });
});
