import { type CostValue, formatMoney, minorOfCost, roundHalfEven } from "#lib/units/money";

/**
 * A cost as money, rounded once: "$2.31".
 * @param cost 1/10,000 minor unit
 * @param shop currency and its digits after the point
 * @returns the cost in the shop's currency
 */
export function costText(
  cost: CostValue,
  shop: { readonly currency: string; readonly minorDigits: number },
): string {
  return formatMoney(minorOfCost(cost, roundHalfEven), shop.currency, shop.minorDigits);
}
