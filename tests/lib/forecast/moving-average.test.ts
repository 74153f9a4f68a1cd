import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { movingAverage } from "#lib/forecast/moving-average";

describe("moving average", () => {
  it("averages the newest weeks only", () => {
    expect(movingAverage([90, 10, 20, 30], 3)).toBe(20);
  });

  it.each([0, 5, 1.5])("refuses a window of %s weeks out of 4", (window) => {
    expect(() => movingAverage([1, 2, 3, 4], window)).toThrow(RangeError);
  });

  it("lies between the least and the most of its weeks", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 10_000 }), { minLength: 4 }), (values) => {
        const last = values.slice(-4);
        expect(movingAverage(values, 4)).toBeGreaterThanOrEqual(Math.min(...last));
        expect(movingAverage(values, 4)).toBeLessThanOrEqual(Math.max(...last));
      }),
    );
  });
});
