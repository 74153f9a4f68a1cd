import { describe, expect, it } from "vitest";
import { finePrice } from "#app/paper-or-bubble/fine-price.ts";

const priced = (value: number, currency: string, minorDigits: number) =>
  finePrice(value, { currency, minorDigits });

describe("the price of a use unit in words", () => {
  it("has up to two digits more than the currency", () => {
    expect(priced(252_000, "USD", 2)).toBe("$0.252");
    expect(priced(36_458, "USD", 2)).toBe("$0.0365");
    expect(priced(250_000, "USD", 2)).toBe("$0.25");
    expect(priced(1_000_000, "USD", 2)).toBe("$1.00");
    expect(priced(125_000, "JPY", 0)).toBe("¥12.5");
    expect(priced(252_000, "EUR", 2)).toBe("€0.252");
    expect(priced(12_500_000_000, "USD", 2)).toBe("$12,500.00");
  });
});
