import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { countQuantile } from "#lib/forecast/count-quantile";
import { dispersionOver, type SumSpread, sumQuantile, sumVariance } from "#lib/forecast/sum-spread";
import { gammaTails } from "#lib/statistics/gamma";

const spread: SumSpread = { perUse: 2, dispersions: [0.3, 0.2, 0.1], whole: false };
const means = fc.double({ min: 1, max: 2000, noNaN: true });
const chances = fc.double({ min: 0.01, max: 0.995, noNaN: true });
const spreads = fc.record({
  perUse: fc.double({ min: 0.05, max: 40, noNaN: true }),
  dispersions: fc.array(fc.double({ min: 0, max: 3, noNaN: true }), { minLength: 1, maxLength: 4 }),
  whole: fc.boolean(),
});

describe("variance of a sum", () => {
  it("is what one use takes times the mean, and k times its square", () => {
    // 2 x 10 + 0.3 x 100
    expect(sumVariance(spread, { mean: 10, weeks: 1 })).toBeCloseTo(50, 12);
    expect(sumVariance(spread, { mean: 10, weeks: 3 })).toBeCloseTo(30, 12);
  });

  it("lies between those of the whole weeks around it", () => {
    // k = (0.3 + 0.2) / 2; then a quarter of the way from 0.2 to 0.1
    expect(sumVariance(spread, { mean: 10, weeks: 1.5 })).toBeCloseTo(20 + 25, 12);
    expect(sumVariance(spread, { mean: 10, weeks: 2.25 })).toBeCloseTo(20 + 17.5, 12);
  });
});

describe("k over some weeks", () => {
  it("is the first one's within the first week, the last one's beyond the last", () => {
    expect(dispersionOver([0.3, 0.2], 0.4)).toBe(0.3);
    expect(dispersionOver([0.3, 0.2], 2)).toBe(0.2);
    expect(dispersionOver([0.3, 0.2], 9.7)).toBe(0.2);
  });

  it("moves without a jump", () => {
    const weeks = fc.double({ min: 0.1, max: 6, noNaN: true });
    fc.assert(
      fc.property(weeks, (at) => {
        const step = dispersionOver(spread.dispersions, at + 1e-7) - dispersionOver(spread.dispersions, at);
        expect(Math.abs(step)).toBeLessThan(1e-6);
      }),
    );
  });
});

describe("quantile of a sum", () => {
  it("of single whole pieces is that of the negative binomial, of a Poisson count where k is 0", () => {
    const single: SumSpread = { perUse: 1, dispersions: [0.25], whole: true };
    fc.assert(
      fc.property(means, chances, (mean, chance) => {
        expect(sumQuantile(single, { mean, weeks: 1 }, chance)).toBe(countQuantile(mean, 0.25, chance));
      }),
    );
    // Published tables of the Poisson distribution: P(X <= 5 | 2) = 0.983, P(X <= 4 | 2) = 0.947 (from memory)
    expect(sumQuantile({ ...single, dispersions: [0] }, { mean: 2, weeks: 1 }, 0.95)).toBe(5);
  });

  it("of pieces that go four at once is that of a count with the same variance", () => {
    // variance 4 x 10 + 0.1 x 100 = 50 = 10 + k 100, so k = 0.4
    const fours: SumSpread = { perUse: 4, dispersions: [0.1], whole: true };
    expect(sumQuantile(fours, { mean: 10, weeks: 1 }, 0.9)).toBe(countQuantile(10, 0.4, 0.9));
  });

  // Below a shape of about 1/20 the low quantiles are too small for a number.
  const gammas = spreads.filter(({ perUse }) => perUse < 10);

  it("of an amount has the wanted share of the gamma distribution of its mean and variance below it", () => {
    fc.assert(
      fc.property(gammas, means, chances, (any, mean, chance) => {
        const sum = { mean, weeks: 1 };
        const amounts = { ...any, whole: false };
        const variance = sumVariance(amounts, sum);
        const found = sumQuantile(amounts, sum, chance);
        const { lower } = gammaTails(found, { shape: (mean * mean) / variance, scale: variance / mean });
        expect(lower).toBeCloseTo(chance, 7);
      }),
    );
  });

  it("is never below 0, and rises with the chance and with the mean", () => {
    const pairs = fc
      .tuple(chances, chances)
      .map(([a, b]): readonly [number, number] => (a < b ? [a, b] : [b, a]));
    const meanPairs = fc
      .tuple(means, means)
      .map(([a, b]): readonly [number, number] => (a < b ? [a, b] : [b, a]));
    fc.assert(
      fc.property(spreads, meanPairs, pairs, ({ perUse, ...rest }, [less, more], [low, high]) => {
        // Uses of whole pieces take one at least.
        const any = { ...rest, perUse: rest.whole ? Math.max(1, perUse) : perUse };
        const at = (mean: number, chance: number) => sumQuantile(any, { mean, weeks: 1.7 }, chance);
        expect(at(less, low)).toBeGreaterThanOrEqual(0);
        expect(at(less, high)).toBeGreaterThanOrEqual(at(less, low) * (1 - 1e-9));
        expect(at(more, low)).toBeGreaterThanOrEqual(at(less, low) * (1 - 1e-9));
      }),
    );
  });

  it("is 0 where nothing is expected, and the mean where nothing spreads", () => {
    expect(sumQuantile(spread, { mean: 0, weeks: 2 }, 0.95)).toBe(0);
    expect(sumQuantile({ ...spread, whole: true }, { mean: 0, weeks: 2 }, 0.95)).toBe(0);
    expect(sumQuantile({ perUse: 0, dispersions: [0], whole: false }, { mean: 7, weeks: 1 }, 0.95)).toBe(7);
  });

  it("refuses a chance of nothing and of all", () => {
    for (const chance of [0, 1]) {
      expect(() => sumQuantile(spread, { mean: 3, weeks: 1 }, chance)).toThrow(RangeError);
    }
  });
});
