import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { poissonExpectedShortage, poissonProbability, poissonTails } from "#lib/statistics/poisson";

const mean = fc.double({ min: 0.001, max: 2000, noNaN: true });
const count = fc.integer({ min: 0, max: 2500 });

describe("Poisson distribution", () => {
  it("gives the examples of its docstrings", () => {
    expect(poissonProbability(0, 2)).toBeCloseTo(Math.exp(-2), 15);
    expect(poissonTails(1, 2).lower).toBeCloseTo(3 * Math.exp(-2), 15);
    expect(poissonExpectedShortage(1, 2)).toBeCloseTo(1 + Math.exp(-2), 14);
  });

  it("has probabilities that add up to its distribution function", () => {
    for (const of of [0.05, 3, 40, 700]) {
      let sum = 0;
      for (let k = 0; k <= of + 3 * Math.sqrt(of); k += 1) {
        sum += poissonProbability(k, of);
        expect(Math.abs(poissonTails(k, of).lower - sum)).toBeLessThan(1e-12 * sum);
      }
    }
  });

  it("has two tails of 1, and the lower rises", () => {
    fc.assert(
      fc.property(count, mean, (k, of) => {
        const { lower, upper } = poissonTails(k, of);
        expect(lower + upper).toBeCloseTo(1, 13);
        expect(poissonTails(k + 1, of).lower).toBeGreaterThanOrEqual(lower);
        expect(poissonTails(k, of * 1.01).lower).toBeLessThanOrEqual(lower);
      }),
    );
  });

  it("loses, with one more in stock, just the chance of a demand above it", () => {
    fc.assert(
      fc.property(count, mean, (k, of) => {
        const fall = poissonExpectedShortage(k, of) - poissonExpectedShortage(k + 1, of);
        expect(Math.abs(fall - poissonTails(k, of).upper)).toBeLessThan(1e-11);
      }),
    );
  });

  it("below 0 has no chance, and a shortage of the mean and what is owed", () => {
    expect(poissonProbability(-1, 2)).toBe(0);
    expect(poissonTails(-1, 2)).toEqual({ lower: 0, upper: 1 });
    expect(poissonExpectedShortage(-3, 2)).toBe(5);
  });

  it("with mean 0 is always 0", () => {
    expect([0, 1].map((k) => poissonProbability(k, 0))).toEqual([1, 0]);
    expect(poissonTails(0, 0)).toEqual({ lower: 1, upper: 0 });
    expect([0, 1].map((k) => poissonExpectedShortage(k, 0))).toEqual([0, 0]);
  });

  it.each([
    [0.5, 1],
    [Number.NaN, 1],
    [1, -1],
    [1, Infinity],
    [1, Number.NaN],
  ])("refuses count %s with mean %s", (k, of) => {
    expect(() => poissonProbability(k, of)).toThrow(RangeError);
    expect(() => poissonTails(k, of)).toThrow(RangeError);
    expect(() => poissonExpectedShortage(k, of)).toThrow(RangeError);
  });
});
