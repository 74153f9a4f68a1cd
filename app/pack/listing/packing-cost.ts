import type { SupplyTerms } from "#lib/packing/card-sum";
import { type MaterialCost, materialCost } from "#lib/packing/material-cost";
import type { Amount } from "#lib/units/amount";

/** What the materials of one parcel cost: at their cost in the books, and bought again today. */
export type PackingCost = { readonly book: MaterialCost; readonly replacement: MaterialCost };

/**
 * What packing a parcel costs in materials, its cartons included.
 *
 * @param parcel amounts of supplies, and cartons by supply id
 * @param terms what the shop paid, and what buying again costs
 */
export function packingCost(
  parcel: {
    readonly lines: readonly { readonly supplyId: string; readonly amount: Amount }[];
    readonly cartons: readonly string[];
  },
  terms: SupplyTerms,
): PackingCost {
  return {
    book: materialCost({ ...parcel, unitCosts: terms.book }),
    replacement: materialCost({ ...parcel, unitCosts: terms.replacement }),
  };
}
