import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { discreteQuantile } from "#lib/statistics/discrete-quantile";

const coinRun = (count: number) => ({ lower: 1 - 0.5 ** (count + 1), upper: 0.5 ** (count + 1) });

describe("discrete quantile", () => {
  it("of 0.9 for a run of coins is the example of its docstring", () => {
    expect(discreteQuantile(0.9, 3, coinRun)).toBe(3);
  });

  it("takes the number whose distribution function meets the probability, not the next", () => {
    expect(discreteQuantile(0.75, 5, coinRun)).toBe(1);
    expect(discreteQuantile(0.75 + 1e-9, 5, coinRun)).toBe(2);
  });

  it("counts a probability as met when only rounding is between", () => {
    const tenths = (count: number) => ({ lower: 0.1 * (count + 1), upper: 1 - 0.1 * (count + 1) });
    expect(0.7 - 0.1 * 7).toBeLessThan(0);
    expect([0.1, 0.2, 0.3, 0.6, 0.7, 0.8].map((p) => discreteQuantile(p, 0, tenths))).toEqual([
      0, 1, 2, 5, 6, 7,
    ]);
    expect([0.3 - 0.1 * 2, 0.9 - 0.3].map((p) => discreteQuantile(p, 9, tenths))).toEqual([0, 5]);
  });

  it("does not depend on the guess", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-9, max: 1 - 1e-9, noNaN: true }),
        fc.double({ min: -50, max: 5000, noNaN: true }),
        (probability, guess) => {
          const found = discreteQuantile(probability, guess, coinRun);
          expect(found).toBe(discreteQuantile(probability, 0, coinRun));
          expect(coinRun(found).lower).toBeGreaterThanOrEqual(probability * (1 - 1e-12));
          if (found > 0) expect(coinRun(found - 1).lower).toBeLessThan(probability);
        },
      ),
    );
  });

  it("asks seldom: some 2 log2 of how far the guess is off", () => {
    let asked = 0;
    const step = (count: number) => {
      asked += 1;
      return count >= 100_000 ? { lower: 1, upper: 0 } : { lower: 0, upper: 1 };
    };
    expect(discreteQuantile(0.5, 99_000, step)).toBe(100_000);
    expect(asked).toBeLessThan(25);
  });

  it.each([
    [0, 1],
    [1, 1],
    [Number.NaN, 1],
    [0.5, Infinity],
  ])("refuses probability %s with guess %s", (probability, guess) => {
    expect(() => discreteQuantile(probability, guess, coinRun)).toThrow(RangeError);
  });
});
