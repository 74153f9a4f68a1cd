import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { pinballLoss } from "#lib/statistics/pinball-loss";

// Koenker and Bassett (1978), Regression quantiles, Econometrica 46: the loss, and that a quantile has the least
// (from memory).
describe("pinball loss", () => {
  it("costs the chance for what falls short and the rest for what is left over", () => {
    expect(pinballLoss(10, 12, 0.95)).toBeCloseTo(1.9, 12);
    expect(pinballLoss(12, 10, 0.95)).toBeCloseTo(0.1, 12);
    expect(pinballLoss(7, 7, 0.3)).toBe(0);
  });

  it("is half of the absolute error for the median", () => {
    const numbers = fc.double({ min: -1000, max: 1000, noNaN: true });
    fc.assert(
      fc.property(numbers, numbers, (said, came) => {
        expect(pinballLoss(said, came, 0.5)).toBeCloseTo(Math.abs(said - came) / 2, 9);
      }),
    );
  });

  it("is least on average for the quantile of what came: no other number loses less", () => {
    const counts = fc.array(fc.nat(50), { minLength: 1, maxLength: 30 });
    fc.assert(
      fc.property(
        counts,
        fc.double({ min: 0.02, max: 0.98, noNaN: true }),
        fc.nat(50),
        (came, chance, other) => {
          const total = (said: number) =>
            came.reduce((sum, actual) => sum + pinballLoss(said, actual, chance), 0);
          const sorted = came.toSorted((a, b) => a - b);
          const quantile = sorted[Math.ceil(chance * sorted.length) - 1] ?? Number.NaN;
          expect(total(quantile)).toBeLessThanOrEqual(total(other) + 1e-9);
        },
      ),
    );
  });
});
