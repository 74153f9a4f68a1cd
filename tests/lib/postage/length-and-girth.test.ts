import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lengthAndGirth } from "#lib/postage/length-and-girth";
import { ratio, ratioNumber } from "#lib/postage/ratio";

describe("length and girth", () => {
  it("are the longest side and once round the other two", () => {
    const { length, girth, sum } = lengthAndGirth([ratio(10n), ratio(30n), ratio(15n)]);
    expect([length, girth, sum].map(ratioNumber)).toEqual([30, 50, 80]);
  });

  it("are at most what any other side as the length would give", () => {
    const side = fc.integer({ min: 1, max: 100 });
    fc.assert(
      fc.property(side, side, side, (a, b, c) => {
        const all = [a + 2 * (b + c), b + 2 * (a + c), c + 2 * (a + b)];
        const { sum } = lengthAndGirth([ratio(BigInt(a)), ratio(BigInt(b)), ratio(BigInt(c))]);
        expect(ratioNumber(sum)).toBe(Math.min(...all));
      }),
    );
  });
});
