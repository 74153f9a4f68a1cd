import type { InvoiceRate } from "#lib/purchasing/invoice-rate";
import { splitMinor } from "#lib/units/money";

/** How delivery and tax are shared over the lines of an invoice: by what they cost, or equally by pack. */
export type ShareRule = "price" | "packs";

/** What an invoice says, in its own currency. */
export type Invoice = {
  /** delivery, and tax where the prices are without it; minor units */
  readonly extrasMinor: number;
  readonly shareRule: ShareRule;
  /** smallest units of the shop's currency for one of the invoice's */
  readonly rate: InvoiceRate;
  readonly lines: readonly {
    readonly packs: number;
    /** price of one pack, minor units; null where it is not known */
    readonly priceMinor: number | null;
  }[];
};

const VALUE_PER_MINOR = 10_000n;

/**
 * Landed value of each line: packs × price and its share of delivery and tax, in the shop's currency. The shares sum
 * to the whole, to the smallest unit of the invoice's currency. A line without a price has no value and bears no
 * share; where no line costs anything, packs decide.
 * Formula: (packs × price + share) × rate.
 *
 * @param invoice prices, extras, the rule for sharing them, the rate
 * @returns 1/10,000 minor unit of the shop's currency, rounded towards zero; null where the price is not known
 * @throws RangeError when packs or prices are not whole numbers from 0
 * @see largest remainder method (Hamilton), common practice
 * @example landedValues({ extrasMinor: 600, shareRule: "price", rate: { numerator: 1n, denominator: 1n },
 *   lines: [{ packs: 3, priceMinor: 700 }] }) // [27_000_000n]
 */
export function landedValues(invoice: Invoice): (bigint | null)[] {
  const { lines, extrasMinor, rate, shareRule } = invoice;
  const prices = lines.map((line) => (line.priceMinor === null ? null : line.priceMinor * line.packs));
  const shares = sharesOf(extrasMinor, prices, {
    price: prices.map((price) => price ?? 0),
    packs: lines.map((line) => (line.priceMinor === null ? 0 : line.packs)),
    rule: shareRule,
  });
  return prices.map((price, index) => {
    if (price === null) return null;
    const minor = BigInt(price + (shares[index] ?? 0));
    return (minor * rate.numerator * VALUE_PER_MINOR) / rate.denominator;
  });
}

type Weights = { readonly price: number[]; readonly packs: number[]; readonly rule: ShareRule };

function sharesOf(extrasMinor: number, prices: readonly (number | null)[], weights: Weights): number[] {
  if (prices.every((price) => price === null)) return [];
  const wanted = weights[weights.rule];
  return splitMinor(extrasMinor, wanted.some((weight) => weight > 0) ? wanted : weights.packs);
}
