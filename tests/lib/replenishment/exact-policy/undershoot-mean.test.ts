import { describe, expect, it } from "vitest";
import { undershootMean } from "#lib/replenishment/exact-policy/undershoot-mean";
import { meanEstimate } from "#lib/replenishment/simulation/estimate";
import { seeded } from "../../forecast/seeded-counts";

// Computed values: tests/reference/service.test.ts.
describe("the mean undershoot", () => {
  it("is what counts fall below a point that is far down, by drawing", () => {
    const { count } = seeded(9);
    const drawn = meanEstimate(
      Array.from({ length: 20_000 }, () => {
        let position = 200;
        while (position > 0) position -= count(4);
        return -position;
      }),
    );
    const wanted = undershootMean({ mean: 4, deviation: 2, whole: true });
    expect(drawn.standardError).toBeLessThan(0.02);
    expect(Math.abs(drawn.mean - wanted)).toBeLessThan(3 * drawn.standardError);
  });

  it("is half of a batch that is always the same", () => {
    expect(undershootMean({ mean: 10, deviation: 0, whole: false })).toBe(5);
    expect(undershootMean({ mean: 1, deviation: 0, whole: true })).toBe(0);
  });

  it("asks for a use", () => {
    expect(() => undershootMean({ mean: 0, deviation: 1, whole: true })).toThrow(/got 0 and 1/);
  });
});
