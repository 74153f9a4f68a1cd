import type { MixQuestion } from "#lib/cushioning/purchase/mix-question";

/** What the search charges for what a mix leaves undone, minor units. */
export type UndoneWeights = {
  /** for each parcel unpacked */
  readonly parcel: number;
  /** for a supply with nothing left of what is to be kept; part of it for a part */
  readonly share: number;
};

/** So many times what it would cost to do it. */
const TIMES = 20;
/** A parcel weighs more than this number of supplies below what is to be kept. */
const SUPPLIES_A_PARCEL = 5;

/**
 * Weights that make the solver look for mixes that leave little undone, and cost little, at once: far above what a pack
 * and its delivery, or a parcel in its dearest way, cost. They guide a search only: what is undone is then brought to its
 * least by itself, and no sum that is shown holds them.
 *
 * @param question all of the mix
 * @returns minor units
 */
export function undoneWeights({ offers, suppliers, types }: MixQuestion): UndoneWeights {
  const dearest = Math.max(
    1,
    ...types.flatMap(({ ways }) => ways.map((way) => way.sendMinor + way.otherMinor)),
  );
  const pack = Math.max(1, ...offers.map(({ steps }) => steps?.[0]?.priceMinor ?? 0));
  const delivery = Math.max(0, ...suppliers.map(({ deliveryMinor }) => deliveryMinor));
  const share = TIMES * (pack + delivery);
  return { parcel: Math.max(TIMES * dearest, SUPPLIES_A_PARCEL * share), share };
}
