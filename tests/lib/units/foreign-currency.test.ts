import { describe, expect, it } from "vitest";
import { foreignCurrency } from "#lib/units/foreign-currency";

// Codes: ISO 4217; signs: Unicode CLDR, as Intl.NumberFormat has them.
describe("a currency that stands in a price", () => {
  it("is told where it is not the shop's", () => {
    expect(foreignCurrency("4.60 EUR", "USD")).toBe("EUR");
    expect(foreignCurrency("€4.60", "USD")).toBe("€");
    expect(foreignCurrency("£ 3", "EUR")).toBe("£");
    expect(foreignCurrency("CA$3", "USD")).toBe("CA$");
  });

  it("is no matter where it is the shop's, or where none is written", () => {
    for (const text of ["4.60", "$4.60", "US$ 4.60", "4.60 usd", "–", "", "dear"]) {
      expect(foreignCurrency(text, "USD")).toBeNull();
    }
    expect(foreignCurrency("4,60 €", "EUR")).toBeNull();
    expect(foreignCurrency("CHF 7", "CHF")).toBeNull();
  });
});
