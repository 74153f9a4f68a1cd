import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { binomialInterval } from "#lib/statistics/binomial-interval";

describe("binomial interval", () => {
  // SciPy 1.17.1: stats.binomtest(seen, trials).proportion_ci(level, method="exact").
  it.each([
    [9, 10, 0.9, 0.6058366975630259, 0.9948838031076954],
    [0, 5, 0.95, 0, 0.5218237501049814],
    [14, 14, 0.9, 0.8073638243498646, 1],
    [45, 50, 0.9, 0.8011669974840242, 0.9597634095978971],
    [1, 3, 0.95, 0.008403758659612647, 0.9057006759492866],
    [300, 1000, 0.99, 0.2632059922479986, 0.33872720619115065],
  ])("of %i of %i at %s is that of another library", (seen, trials, level, low, high) => {
    const interval = binomialInterval(seen, trials, level);
    expect(interval.low).toBeCloseTo(low, 10);
    expect(interval.high).toBeCloseTo(high, 10);
  });

  it("says nothing without trials", () => {
    expect(binomialInterval(0, 0, 0.9)).toEqual({ low: 0, high: 1 });
  });

  it("holds the seen share and mirrors when hits and misses change places", () => {
    fc.assert(
      fc.property(fc.nat(60), fc.nat(60), (seen, missed) => {
        fc.pre(seen + missed > 0);
        const { low, high } = binomialInterval(seen, seen + missed, 0.9);
        const mirrored = binomialInterval(missed, seen + missed, 0.9);
        expect(low).toBeLessThanOrEqual(seen / (seen + missed));
        expect(high).toBeGreaterThanOrEqual(seen / (seen + missed));
        expect(mirrored.low).toBeCloseTo(1 - high, 9);
      }),
    );
  });

  it.each([
    [3, 2, 0.9],
    [-1, 2, 0.9],
    [1.5, 2, 0.9],
    [1, 2, 1],
  ])("refuses %s of %s at %s", (seen, trials, level) => {
    expect(() => binomialInterval(seen, trials, level)).toThrow(RangeError);
  });
});
