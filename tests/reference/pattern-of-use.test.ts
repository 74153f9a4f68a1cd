import { describe, expect, it } from "vitest";
import { patternOfUse } from "#lib/forecast/pattern-of-use";

// Cut-offs of Syntetos, Boylan and Croston (2005) as coded in the R package tsintermittent
// (https://github.com/cran/tsintermittent/blob/master/R/idclass.R); intervals and variations computed apart
// from this code.
describe("pattern of use against an independent calculation", () => {
  it.each([
    ["intermittent", [0, 0, 5, 0, 4, 0, 0, 6, 0, 5, 0, 0], 2.5, 0.02666666666667],
    ["smooth", [12, 0, 3, 9, 7, 0, 14, 11, 2, 8, 10, 6], 1.2, 0.2174631502413],
    ["lumpy", [0, 0, 1, 0, 30, 0, 0, 0, 4, 0, 0, 12], 3, 1.228308435189],
    ["erratic", [40, 2, 15, 60, 5, 33, 1, 70, 12, 8, 55, 3], 1, 0.9893918408461],
    ["smooth", [20, 22, 19, 21, 20, 23, 18, 20, 21, 19, 22, 20], 1, 0.004997917534361],
  ] as const)("%s", (kind, values, meanInterval, squaredVariation) => {
    const found = patternOfUse(values);
    expect(found?.kind).toBe(kind);
    expect(found?.meanInterval).toBeCloseTo(meanInterval, 9);
    expect((found?.squaredVariation ?? 0) / squaredVariation).toBeCloseTo(1, 9);
  });
});
