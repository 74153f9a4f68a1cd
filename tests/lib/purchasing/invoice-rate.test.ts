import { describe, expect, it } from "vitest";
import { invoiceDigits, invoiceRate } from "#lib/purchasing/invoice-rate";

const DOLLARS = { currency: "USD", minorDigits: 2 };
const YEN = { currency: "JPY", minorDigits: 0 };

/** What a sum of the invoice is in the shop's smallest units. */
function inShop(minor: number, invoice: Parameters<typeof invoiceRate>[0], shop: typeof DOLLARS): number {
  const { numerator, denominator } = invoiceRate(invoice, shop);
  return (minor * Number(numerator)) / Number(denominator);
}

describe("rate of an invoice", () => {
  // ISO 4217: a yen has no smaller unit, a dollar and a euro have a hundred, a Kuwaiti dinar a thousand.
  it("is between smallest units, whatever digits the two currencies have", () => {
    expect(inShop(3_900, { currency: "JPY", rateMillionths: 6_700 }, DOLLARS)).toBeCloseTo(2_613, 9); // 26.13
    expect(inShop(2_650, { currency: "USD", rateMillionths: 150_250_000 }, YEN)).toBeCloseTo(3_981.625, 9);
    expect(inShop(9_500, { currency: "KWD", rateMillionths: 3_250_000 }, DOLLARS)).toBeCloseTo(3_087.5, 9);
    expect(inShop(2_650, { currency: "EUR", rateMillionths: 1_083_600 }, DOLLARS)).toBeCloseTo(2_871.54, 9);
  });

  it("is one in the shop's own currency, with the digits that the shop keeps", () => {
    expect(inShop(2_650, { currency: "USD", rateMillionths: 1_000_000 }, DOLLARS)).toBe(2_650);
    expect(invoiceDigits("USD", { currency: "USD", minorDigits: 3 })).toBe(3);
    expect([invoiceDigits("JPY", DOLLARS), invoiceDigits("USD", YEN)]).toEqual([0, 2]);
  });
});
