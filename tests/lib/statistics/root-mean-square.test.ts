import { describe, expect, it } from "vitest";
import { rootMeanSquare } from "#lib/statistics/root-mean-square";

describe("root mean square", () => {
  it("rootMeanSquare([3, -4]) is the example of its docstring", () => {
    expect(rootMeanSquare([3, -4])).toBeCloseTo(Math.sqrt(12.5), 12);
  });

  it("keeps a steady lean to one side", () => {
    expect(rootMeanSquare([5, 5, 5])).toBe(5);
  });

  it("refuses an empty list", () => {
    expect(() => rootMeanSquare([])).toThrow(RangeError);
  });
});
