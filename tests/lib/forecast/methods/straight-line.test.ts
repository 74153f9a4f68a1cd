import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { straightLine } from "#lib/forecast/methods/straight-line";

describe("straight line through values", () => {
  it("has the least squares slope", () => {
    // Places 1, 2, 3, 4 about 2.5; values 1, 3, 2, 6 with mean 3:
    // tilt = -1.5 x 1 - 0.5 x 3 + 0.5 x 2 + 1.5 x 6 = 7; spread = 2.25 + 0.25 + 0.25 + 2.25 = 5; slope 1.4;
    // height before the first value 3 - 1.4 x 2.5 = -0.5
    const { level, slope } = straightLine([1, 3, 2, 6]);
    expect(slope).toBeCloseTo(1.4, 12);
    expect(level).toBeCloseTo(-0.5, 12);
  });

  it("is flat through one value, and refuses none", () => {
    expect(straightLine([7])).toEqual({ level: 7, slope: 0 });
    expect(() => straightLine([])).toThrow(RangeError);
  });

  it("finds any line that is one", () => {
    fc.assert(
      fc.property(fc.integer({ min: -50, max: 50 }), fc.integer({ min: -9, max: 9 }), (level, slope) => {
        const found = straightLine([1, 2, 3, 4, 5, 6].map((step) => level + slope * step));
        expect(found.level).toBeCloseTo(level, 9);
        expect(found.slope).toBeCloseTo(slope, 9);
      }),
    );
  });
});
