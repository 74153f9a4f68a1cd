import type { MaterialCost } from "#lib/packing/material-cost";
import { formatMoney, minorOfCost, roundHalfEven } from "#lib/units/money";
import type { Shop } from "#prisma/records/shop";

type Currency = Pick<Shop, "currency" | "minorDigits">;

/**
 * What materials cost, in words: "at least" where a price is missing.
 *
 * @param sum cost with what it leaves out
 * @param shop its currency
 * @returns "$2.05", "at least $1.10", "not known yet"
 */
export function costWords({ cost, unknown }: MaterialCost, { currency, minorDigits }: Currency): string {
  if (cost === 0 && unknown.length > 0) return "not known yet";
  const money = formatMoney(minorOfCost(cost, roundHalfEven), currency, minorDigits);
  return unknown.length === 0 ? money : `at least ${money}`;
}
