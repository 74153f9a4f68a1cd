import { z } from "zod";
import { invoiceDigits, type ShopMoney } from "#lib/purchasing/invoice-rate";
import { moneyTyped, tick } from "../_parts/typed-fields";

const MILLION = 1_000_000;
/** The largest number that the column for rates holds. */
const MOST_RATE = 2_147_483_647;
const RATE_PROBLEM = "Write what one unit of the invoice’s currency costs in yours, like 1.0836.";

/** A rate of exchange, kept in millionths. */
const rateTyped = z.string().transform((text, context): number => {
  const value = /^\d+([.,]\d{1,6})?$/.test(text) ? Math.round(Number(text.replace(",", ".")) * MILLION) : 0;
  if (value > 0 && value <= MOST_RATE) return value;
  context.addIssue({ code: "custom", message: RATE_PROBLEM });
  return z.NEVER;
});

/**
 * What an invoice says beside its lines: delivery, tax, currency.
 *
 * @param minorDigits digits after the point of the invoice's currency
 */
export function invoiceShape(minorDigits: number) {
  return {
    delivery: moneyTyped(minorDigits).optional(),
    tax: moneyTyped(minorDigits).optional(),
    taxOnTop: tick,
    shareRule: z.enum(["price", "packs"]).default("price"),
    currency: z
      .string()
      .trim()
      .toUpperCase()
      .regex(/^[A-Z]{3}$/, "Write the three letters of a currency, like USD."),
    rate: rateTyped.optional(),
  };
}

/**
 * Digits after the point of the currency that stands in a form: the shop's while it can't be read.
 *
 * @param typed the currency as typed
 * @param shop its currency and digits
 * @returns digits in which the prices of the form are read
 */
export function typedDigits(typed: string | undefined, shop: ShopMoney): number {
  const code = typed?.trim().toUpperCase() ?? "";
  return /^[A-Z]{3}$/.test(code) ? invoiceDigits(code, shop) : shop.minorDigits;
}

/** The parts of an invoice that must agree with one another. */
type InvoiceParts = { readonly currency: string; readonly rate?: number | undefined };

/**
 * What is wrong with the rate of an invoice: another currency needs one, the shop's own has none.
 *
 * @param invoice its currency and rate, as read
 * @param shopCurrency three letters
 * @returns words with the way out, or null
 */
export function rateProblem({ currency, rate }: InvoiceParts, shopCurrency: string): string | null {
  if (currency !== shopCurrency && rate === undefined) {
    return `Write what one ${currency} cost in ${shopCurrency}, like 1.0836: the receipt or your bank says it.`;
  }
  if (currency === shopCurrency && rate !== undefined && rate !== MILLION) {
    return `The invoice is in ${shopCurrency} itself: leave the rate empty, or change its currency.`;
  }
  return null;
}

/** Shop currency per invoice currency in millionths: one where it is the shop's own. */
export function rateMillionths({ rate }: InvoiceParts): number {
  return rate ?? MILLION;
}
