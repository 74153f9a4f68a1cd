import type { SupplierDelivery } from "#lib/replenishment/lead-time/supplier-delivery";
import type { Amount } from "#lib/units/amount";

/** A supplier's pack and its prices, as far as the check needs them. */
export type CheckOffer = {
  readonly offerId: string;
  readonly supplierId: string;
  readonly supplierName: string;
  readonly delivery: SupplierDelivery;
  /** the pack in words, "roll of 300 ft" */
  readonly pack: string;
  readonly packAmount: Amount;
  /** landed price of one pack in minor units, null when not known */
  readonly priceMinor: number | null;
  /** from so many packs on it costs this */
  readonly breaks: readonly { readonly fromPacks: number; readonly priceMinor: number }[];
  /** whether a break's price counts for every pack or for those from it on */
  readonly breakKind: "all-units" | "incremental";
  /** room of one pack at home, millilitres; null where not known */
  readonly volumeMl: number | null;
  /** packs that the supplier sells a customer in a month at most; null or left out: as many as wanted */
  readonly mostPacksAMonth?: number | null;
};

/**
 * Suggested packs: the fewest whole packs that lift the position to the target.
 *
 * (target - position) / pack, rounded up, never below 0
 *
 * @param position on hand and on order
 * @param target where the position should be after the order
 * @param packAmount what one pack holds, above 0
 * @returns whole packs
 * @throws RangeError when the pack holds nothing
 * @example suggestedPacks(amountOfUnits(61), amountOfUnits(240), amountOfUnits(175)) // 2
 */
export function suggestedPacks(position: Amount, target: Amount, packAmount: Amount): number {
  if (packAmount <= 0) {
    throw new RangeError(`suggestedPacks requires a pack above 0, got ${packAmount}`);
  }
  return Math.max(0, Math.ceil((target - position) / packAmount));
}
