import { formatMoney, minorUnits } from "#lib/units/money";
import { type UseUnit, unitWord } from "#lib/units/use-unit";

const VALUE_PER_MINOR = 10_000;
const SMALL_MINOR = 100;

/**
 * What one use unit costs, in the currency; below one unit of the currency with two more digits, since a sheet
 * costs a few cents and a strip a part of one.
 *
 * @param unitCost 1/10,000 minor unit per use unit; null where no price is known
 * @param unit the use unit
 * @param money currency and its digits after the point
 * @returns words for the table
 * @example unitCostWords(138_000, "foot", { currency: "USD", minorDigits: 2 }) // "$0.138 a ft"
 */
export function unitCostWords(
  unitCost: number | null,
  unit: UseUnit,
  money: { readonly currency: string; readonly minorDigits: number },
): string {
  if (unitCost === null) return "price not known";
  const minor = unitCost / VALUE_PER_MINOR;
  const each = unit === "each" ? " each" : ` a ${unitWord(unit, 1)}`;
  if (minor >= SMALL_MINOR)
    return `${formatMoney(minorUnits(Math.round(minor)), money.currency, money.minorDigits)}${each}`;
  const format = new Intl.NumberFormat("en", {
    style: "currency",
    currency: money.currency,
    minimumFractionDigits: money.minorDigits,
    maximumFractionDigits: money.minorDigits + 2,
  });
  return `${format.format(minor / 10 ** money.minorDigits)}${each}`;
}
