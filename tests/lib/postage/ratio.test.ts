import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  compareRatios,
  ratio,
  ratioNumber,
  ratioProduct,
  ratioQuotient,
  ratioSum,
  ratioText,
} from "#lib/postage/ratio";

const ratios = fc
  .tuple(fc.bigInt(-1_000n, 1_000n), fc.bigInt(1n, 1_000n))
  .map(([numerator, denominator]) => ratio(numerator, denominator));
const isSame = (a: ReturnType<typeof ratio>, b: ReturnType<typeof ratio>) => compareRatios(a, b) === 0;

describe("exact fractions", () => {
  it("tell 15.999 from 16, and a third from its decimals", () => {
    expect(compareRatios(ratio(15_999n, 1_000n), ratio(16n))).toBe(-1);
    expect(compareRatios(ratio(1n, 3n), ratio(333_333_333n, 1_000_000_000n))).toBe(1);
    expect(compareRatios(ratio(2n, 6n), ratio(1n, 3n))).toBe(0);
  });

  it("refuse a denominator of zero or below", () => {
    expect(() => ratio(1n, 0n)).toThrow(RangeError);
    expect(() => ratioQuotient(ratio(1n), ratio(-1n))).toThrow("above 0, got -1");
  });

  it("are shown to three digits, and say when that is not all", () => {
    expect(ratioText(ratio(12_000n, 139n))).toBe("about 86.331");
    expect(ratioText(ratio(1_872n))).toBe("1,872");
    expect(ratioText(ratio(171_444n, 100n))).toBe("1,714.44");
  });

  it("add and multiply in any order, and division undoes multiplication", () => {
    fc.assert(
      fc.property(ratios, ratios, ratios, (a, b, c) => {
        expect(isSame(ratioSum(a, b, c), ratioSum(c, ratioSum(b, a)))).toBe(true);
        const spread = ratioSum(ratioProduct(a, c), ratioProduct(b, c));
        expect(isSame(ratioProduct(ratioSum(a, b), c), spread)).toBe(true);
        if (b.numerator > 0n) expect(isSame(ratioProduct(ratioQuotient(a, b), b), a)).toBe(true);
      }),
    );
  });

  it("keep the order of their floats", () => {
    fc.assert(
      fc.property(ratios, ratios, (a, b) => {
        expect(Math.sign(ratioNumber(a) - ratioNumber(b))).toBe(compareRatios(a, b));
      }),
    );
  });
});
