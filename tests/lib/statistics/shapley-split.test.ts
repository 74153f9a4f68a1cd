import { describe, expect, it } from "vitest";
import { shapleySplit } from "#lib/statistics/shapley-split";

/** The largest need among the members of a set. */
const runway = (needs: readonly number[]) => (set: number) =>
  Math.max(0, ...needs.filter((_, index) => (set & (1 << index)) !== 0));

describe("the Shapley split", () => {
  // Littlechild and Owen (1973), the airport game: a runway as long as the largest aeroplane needs. Each length is shared
  // by those who need it: 8/4, then 3/3, 2/2 and 5 more.
  it("shares a runway as Littlechild and Owen prove", () => {
    const shares = shapleySplit(4, runway([8, 11, 13, 18]));
    [2, 3, 4, 9].forEach((share, index) => {
      expect(shares[index]).toBeCloseTo(share, 12);
    });
  });

  // Shapley's own example class, the glove game: one left glove, two right ones; a pair is worth 1.
  it("gives the only left glove two thirds of a pair", () => {
    const pair = (set: number) => ((set & 1) !== 0 && (set & 6) !== 0 ? 1 : 0);
    const shares = shapleySplit(3, pair);
    expect(shares[0]).toBeCloseTo(2 / 3, 12);
    expect(shares[1]).toBeCloseTo(1 / 6, 12);
    expect(shares[2]).toBeCloseTo(1 / 6, 12);
  });

  // Bennet (1920): price effect ½ (q0 + q1)(p1 − p0), quantity effect ½ (p0 + p1)(q1 − q0).
  it("is Bennet's split for a price and a quantity", () => {
    const [p0, p1, q0, q1] = [7, 7.6, 11, 13] as const;
    const [price, quantity] = shapleySplit(2, (set) => (set & 1 ? p1 : p0) * (set & 2 ? q1 : q0));
    expect(price).toBeCloseTo(0.5 * (q0 + q1) * (p1 - p0), 12);
    expect(quantity).toBeCloseTo(0.5 * (p0 + p1) * (q1 - q0), 12);
  });

  it("adds up, and gives nothing to what changes nothing", () => {
    const value = (set: number) => (1 + (set & 1)) * (2 + (set & 2)) - (set & 1 ? 0.3 : 0);
    const shares = shapleySplit(3, value);
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(value(7) - value(0), 12);
    expect(shares[2]).toBe(0);
  });

  it("refuses what it can't try", () => {
    expect(shapleySplit(0, () => 5)).toEqual([]);
    expect(() => shapleySplit(13, () => 0)).toThrow(/got 13/);
  });
});
