import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  negativeBinomialExpectedShortage,
  negativeBinomialProbability,
  negativeBinomialTails,
} from "#lib/statistics/negative-binomial";
import { poissonExpectedShortage, poissonProbability, poissonTails } from "#lib/statistics/poisson";

const demand = fc.record({
  mean: fc.double({ min: 0.001, max: 1000, noNaN: true }),
  size: fc.double({ min: 0.01, max: 1000, noNaN: true }),
});
const count = fc.integer({ min: 0, max: 2000 });

describe("negative binomial distribution", () => {
  it("gives the examples of its docstrings", () => {
    expect(negativeBinomialProbability(0, { mean: 2, size: 2 })).toBeCloseTo(0.25, 15);
    expect(negativeBinomialTails(1, { mean: 2, size: 2 }).lower).toBeCloseTo(0.5, 15);
    expect(negativeBinomialExpectedShortage(1, { mean: 2, size: 2 })).toBeCloseTo(1.25, 14);
  });

  it("with size 1 is geometric: the tail above k is (mean / (1 + mean))^(k + 1)", () => {
    const of = { mean: 4, size: 1 };
    for (let k = 0; k <= 60; k += 1) {
      expect(Math.abs(negativeBinomialTails(k, of).upper / 0.8 ** (k + 1) - 1)).toBeLessThan(1e-13);
      expect(Math.abs(negativeBinomialExpectedShortage(k, of) / (4 * 0.8 ** k) - 1)).toBeLessThan(1e-12);
    }
  });

  it.each([1e12, 1e15, 1e200])("with size %s is Poisson", (size) => {
    for (const k of [0, 20, 40, 60, 90]) {
      const of = { mean: 40, size };
      const near = (actual: number, expected: number) =>
        expect(Math.abs(actual / expected - 1)).toBeLessThan(1e-8);
      near(negativeBinomialProbability(k, of), poissonProbability(k, 40));
      near(negativeBinomialTails(k, of).lower, poissonTails(k, 40).lower);
      near(negativeBinomialTails(k, of).upper, poissonTails(k, 40).upper);
      near(negativeBinomialExpectedShortage(k, of), poissonExpectedShortage(k, 40));
    }
  });

  it("has probabilities that add up to its distribution function", () => {
    for (const of of [
      { mean: 0.5, size: 0.01 },
      { mean: 3, size: 0.2 },
      { mean: 60, size: 20 },
    ]) {
      let sum = 0;
      for (let k = 0; k <= 200; k += 1) {
        sum += negativeBinomialProbability(k, of);
        expect(Math.abs(negativeBinomialTails(k, of).lower - sum)).toBeLessThan(1e-12 * sum);
      }
    }
  });

  it("has two tails of 1, and the lower rises", () => {
    fc.assert(
      fc.property(count, demand, (k, of) => {
        const { lower, upper } = negativeBinomialTails(k, of);
        expect(lower + upper).toBeCloseTo(1, 12);
        expect(negativeBinomialTails(k + 1, of).lower).toBeGreaterThanOrEqual(lower - 1e-13);
      }),
    );
  });

  it("loses, with one more in stock, just the chance of a demand above it", () => {
    fc.assert(
      fc.property(count, demand, (k, of) => {
        const fall = negativeBinomialExpectedShortage(k, of) - negativeBinomialExpectedShortage(k + 1, of);
        expect(Math.abs(fall - negativeBinomialTails(k, of).upper)).toBeLessThan(1e-10);
      }),
    );
  });

  it("below 0 has no chance, and a shortage of the mean and what is owed", () => {
    const of = { mean: 2, size: 3 };
    expect(negativeBinomialProbability(-1, of)).toBe(0);
    expect(negativeBinomialTails(-1, of)).toEqual({ lower: 0, upper: 1 });
    expect(negativeBinomialExpectedShortage(-3, of)).toBe(5);
  });

  it("with mean 0 is always 0", () => {
    const of = { mean: 0, size: 3 };
    expect([0, 1].map((k) => negativeBinomialProbability(k, of))).toEqual([1, 0]);
    expect(negativeBinomialTails(0, of)).toEqual({ lower: 1, upper: 0 });
    expect([0, 1].map((k) => negativeBinomialExpectedShortage(k, of))).toEqual([0, 0]);
  });

  it.each([
    [0.5, 1, 1],
    [1, -1, 1],
    [1, Infinity, 1],
    [1, 1, 0],
    [1, 1, Number.NaN],
  ])("refuses count %s with mean %s and size %s", (k, mean, size) => {
    expect(() => negativeBinomialProbability(k, { mean, size })).toThrow(RangeError);
    expect(() => negativeBinomialTails(k, { mean, size })).toThrow(RangeError);
    expect(() => negativeBinomialExpectedShortage(k, { mean, size })).toThrow(RangeError);
  });
});
