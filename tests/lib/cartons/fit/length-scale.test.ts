import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { longAsWhole, plainShare, roundedShare } from "#lib/cartons/fit/length-scale";

describe("a scale of lengths", () => {
  it("is the plain share", () => {
    expect(plainShare(25, 100)).toBe(0.25);
  });

  it("counts a side over a third as half, and over a half as the whole", () => {
    expect([33, 34, 50, 51, 66, 67, 100].map((side) => roundedShare(2)(side, 100))).toEqual([
      0, 0.5, 0.5, 0.5, 0.5, 1, 1,
    ]);
    expect([49, 50, 51].map((side) => roundedShare(1)(side, 100))).toEqual([0, 0.5, 1]);
    expect(roundedShare(2)(30, 90)).toBeCloseTo(1 / 3, 12);
  });

  it("counts a long side as the whole, and a short one as nothing", () => {
    expect([29, 30, 70, 71, 75].map((side) => longAsWhole(30)(side, 100))).toEqual([0, 0.3, 0.7, 1, 1]);
  });

  it("gives no row in the room more than 1", () => {
    const room = 60;
    const scales = [
      plainShare,
      ...[1, 2, 3, 4, 7].map(roundedShare),
      ...[1, 7, 15, 20, 29, 30].map(longAsWhole),
    ];
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: room }), { minLength: 1, maxLength: 12 }), (given) => {
        const row = given.filter(
          (_, at) => given.slice(0, at + 1).reduce((sum, side) => sum + side, 0) <= room,
        );
        for (const scale of scales) {
          const shares = row.reduce((sum, side) => sum + scale(side, room), 0);
          expect(shares).toBeLessThanOrEqual(1 + 1e-12);
        }
      }),
      { numRuns: 2000 },
    );
  });
});
