import { formatMoney } from "#lib/units/money";
import type { Shop } from "#prisma/records/shop";

/** From so many whole currency units on, the small coins of an estimate tell nothing. */
const WITHOUT_COINS = 2;

/** Words for money, without a sign; coins are left out where what stands beside it has none. */
export type MoneyWords = (minor: number, beside?: number) => string;

/**
 * Money as an estimate says it: whole currency units, with coins only where it is little.
 *
 * @param shop its currency
 * @returns words for minor units, whatever their sign
 * @example moneyWords(shop)(-1234.4) // "$12"
 */
export function moneyWords({ currency, minorDigits }: Pick<Shop, "currency" | "minorDigits">): MoneyWords {
  const perUnit = 10 ** minorDigits;
  return (minor, beside = minor) => {
    const largest = Math.max(Math.abs(minor), Math.abs(beside)) / perUnit;
    return largest >= WITHOUT_COINS
      ? formatMoney(Math.round(Math.abs(minor) / perUnit), currency, 0)
      : formatMoney(Math.round(Math.abs(minor)), currency, minorDigits);
  };
}
