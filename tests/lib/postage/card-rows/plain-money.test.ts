import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { plainMoney } from "#lib/postage/card-rows/plain-money";
import { parseMoney } from "#lib/units/money";

describe("plain money", () => {
  it("has the currency's digits and no sign", () => {
    expect([
      plainMoney(460, 2),
      plainMoney(5, 2),
      plainMoney(0, 2),
      plainMoney(460, 0),
      plainMoney(1234, 3),
    ]).toEqual(["4.60", "0.05", "0.00", "460", "1.234"]);
  });

  it("is read back as the same sum", () => {
    fc.assert(
      fc.property(fc.nat(1_000_000_000), fc.constantFrom(0, 2, 3), (minor, digits) => {
        expect(parseMoney(plainMoney(minor, digits), digits)).toEqual({ kind: "money", minor });
      }),
    );
  });
});
