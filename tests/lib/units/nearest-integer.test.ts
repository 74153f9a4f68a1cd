import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { nearestInteger } from "#lib/units/nearest-integer";

describe("nearestInteger", () => {
  it("takes a half to the even neighbour", () => {
    expect(nearestInteger(5n, 2n)).toBe(2);
  });

  it("takes a half above an odd number up", () => {
    expect(nearestInteger(7n, 2n)).toBe(4);
  });

  it("rounds below zero like above it", () => {
    expect([nearestInteger(-5n, 2n), nearestInteger(-7n, 2n), nearestInteger(-1n, 3n)]).toEqual([-2, -4, 0]);
  });

  it("refuses a denominator of zero", () => {
    expect(() => nearestInteger(1n, 0n)).toThrow("nearestInteger requires a positive denominator, got 0");
  });

  it("refuses an answer that is not exact in code", () => {
    expect(() => nearestInteger(2n ** 60n, 1n)).toThrow(RangeError);
  });

  it("is never more than half away", () => {
    fc.assert(
      fc.property(
        fc.bigInt({ min: -(2n ** 50n), max: 2n ** 50n }),
        fc.bigInt({ min: 1n, max: 10n ** 9n }),
        (n, d) => {
          const twiceRest = 2n * (n - BigInt(nearestInteger(n, d)) * d);
          expect(twiceRest <= d && twiceRest >= -d).toBe(true);
        },
      ),
    );
  });
});
