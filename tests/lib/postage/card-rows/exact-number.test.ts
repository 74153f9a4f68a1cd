import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { exactNumber } from "#lib/postage/card-rows/exact-number";
import { ratio } from "#lib/postage/ratio";
import { numberFromText } from "#lib/units/number-text";

describe("an exact number as text", () => {
  it("is whole, decimal or a fraction", () => {
    const texts = [ratio(139n), ratio(785n, 1000n), ratio(5n, 10n), ratio(1n, 4n)].map(exactNumber);
    expect(texts).toEqual(["139", "0.785", "0.5", "1/4"]);
  });

  it("is read back as the same fraction", () => {
    const denominators = fc.constantFrom(1n, 2n, 3n, 8n, 10n, 100n, 1000n, 139n);
    fc.assert(
      fc.property(fc.bigInt(0n, 9_999_999n), denominators, (numerator, denominator) => {
        const value = ratio(numerator, denominator);
        expect(numberFromText(exactNumber(value), "metric")).toEqual(value);
      }),
    );
  });
});
