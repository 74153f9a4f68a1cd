import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { normalQuantile } from "#lib/statistics/normal-quantile";
import { studentTQuantile } from "#lib/statistics/student-t-quantile";

describe("Student t quantile", () => {
  it("studentTQuantile(0.95, 3) is the example of its docstring", () => {
    expect(studentTQuantile(0.95, 3)).toBeCloseTo(2.3533634348018, 10);
  });

  it("with 1 degree is tan(pi (p - 1/2)), the Cauchy quantile (from memory)", () => {
    expect(studentTQuantile(0.9, 1)).toBeCloseTo(Math.tan(Math.PI * 0.4), 10);
  });

  it("with 2 degrees is (2p - 1) sqrt(2 / (4p(1 - p))) (from memory)", () => {
    expect(studentTQuantile(0.9, 2)).toBeCloseTo(0.8 * Math.sqrt(2 / 0.36), 10);
  });

  it.each([
    [0, 3],
    [1, 3],
    [0.9, 0],
    [0.9, 2.5],
  ])("refuses probability %s with %s degrees", (probability, degrees) => {
    expect(() => studentTQuantile(probability, degrees)).toThrow(RangeError);
  });

  it("lies beyond the normal quantile and comes nearer with more degrees", () => {
    fc.assert(
      fc.property(fc.integer({ min: 51, max: 99 }), fc.integer({ min: 1, max: 40 }), (percent, degrees) => {
        const wide = studentTQuantile(percent / 100, degrees);
        const narrow = studentTQuantile(percent / 100, degrees + 1);
        expect(wide).toBeGreaterThan(narrow);
        expect(narrow).toBeGreaterThan(normalQuantile(percent / 100));
      }),
    );
  });
});
