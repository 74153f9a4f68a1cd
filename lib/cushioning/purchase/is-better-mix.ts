import type { MixCosts, MixLack } from "#lib/cushioning/purchase/costed-mix";

/** What plans are ranked by. */
export type RankedMix = { readonly lack: MixLack; readonly costs: Pick<MixCosts, "totalMinor"> };

/** Less than this of a parcel, or of what a supply is to keep, is no difference. */
const NEARLY_NOTHING = 1e-4;

/**
 * Whether a plan is better than another: fewer parcels unpacked; with as many, less below what is to be kept; with as
 * much, a lower total.
 *
 * @param one a plan
 * @param other another plan for the same question
 * @returns true only where it is better, not where both are as good
 */
export function isBetterMix(one: RankedMix, other: RankedMix): boolean {
  const parcels = one.lack.parcels - other.lack.parcels;
  if (Math.abs(parcels) > NEARLY_NOTHING) return parcels < 0;
  const share = one.lack.share - other.lack.share;
  if (Math.abs(share) > NEARLY_NOTHING) return share < 0;
  return one.costs.totalMinor < other.costs.totalMinor;
}
