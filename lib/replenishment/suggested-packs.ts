import type { Amount } from "#lib/units/amount";

/** A supplier's pack and its prices, as far as the check needs them. */
export type CheckOffer = {
  readonly offerId: string;
  readonly supplierId: string;
  readonly supplierName: string;
  readonly leadTimeDays: number;
  /** the pack in words, "roll of 300 ft" */
  readonly pack: string;
  readonly packAmount: Amount;
  /** landed price of one pack in minor units, null when not known */
  readonly priceMinor: number | null;
  /** from so many packs on, every pack costs this */
  readonly breaks: readonly { readonly fromPacks: number; readonly priceMinor: number }[];
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

/**
 * Price of one pack when so many are bought: the last price break that is reached, for all packs.
 *
 * @param offer pack, price and breaks
 * @param packs whole packs
 * @returns minor units a pack, or null when the price is not known
 * @example packPrice({ ...offer, priceMinor: 3800, breaks: [{ fromPacks: 4, priceMinor: 3500 }] }, 5) // 3500
 */
export function packPrice(offer: CheckOffer, packs: number): number | null {
  const reached = offer.breaks
    .filter((step) => step.fromPacks <= packs)
    .reduce<CheckOffer["breaks"][number] | null>(
      (highest, step) => (highest === null || step.fromPacks > highest.fromPacks ? step : highest),
      null,
    );
  return reached === null ? offer.priceMinor : reached.priceMinor;
}
