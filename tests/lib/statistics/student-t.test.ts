import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { studentTLogDensity, studentTTails } from "#lib/statistics/student-t";
import { studentTQuantile } from "#lib/statistics/student-t-quantile";

describe("Student's t", () => {
  it("studentTTails(2.3533634348018, 3) is the example of its docstring", () => {
    expect(studentTTails(2.3533634348018, 3).lower).toBeCloseTo(0.95, 12);
    expect(studentTLogDensity(0, 1)).toBeCloseTo(-Math.log(Math.PI), 12);
  });

  // SciPy 1.17.1: stats.t.cdf, stats.t.sf, stats.t.logpdf.
  it.each([
    [0.5, 2.5, 0.6711510400651426, 0.3288489599348574, -1.1834324081180188],
    [-4.3, 7.3, 0.0016178181886516618, 0.9983821818113483, -6.190847045775184],
    [12, 4, 0.9998617857257485, 0.0001382142742514865, -10.008124034622288],
    [1.96, 1000, 0.9748634075221256, 0.025136592477874368, -2.83822560231697],
    [-0.01, 0.7, 0.4970537562981868, 0.5029462437018132, -1.2221350015222336],
  ])("at %s with %s degrees is that of another library", (t, degrees, lower, upper, logDensity) => {
    const tails = studentTTails(t, degrees);
    expect(tails.lower / lower).toBeCloseTo(1, 10);
    expect(tails.upper / upper).toBeCloseTo(1, 10);
    expect(studentTLogDensity(t, degrees)).toBeCloseTo(logDensity, 10);
  });

  it("is undone by the quantile for whole degrees", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 1, max: 99 }), (degrees, percent) => {
        const t = studentTQuantile(percent / 100, degrees);
        expect(studentTTails(t, degrees).lower).toBeCloseTo(percent / 100, 9);
      }),
    );
  });

  it("reaches its ends", () => {
    expect(studentTTails(Number.POSITIVE_INFINITY, 3)).toEqual({ lower: 1, upper: 0 });
    expect(studentTTails(Number.NEGATIVE_INFINITY, 3)).toEqual({ lower: 0, upper: 1 });
  });

  it.each([
    [Number.NaN, 3],
    [1, 0],
    [1, Number.POSITIVE_INFINITY],
  ])("refuses t %s with %s degrees", (t, degrees) => {
    expect(() => studentTTails(t, degrees)).toThrow(RangeError);
  });
});
