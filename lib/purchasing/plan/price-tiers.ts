import type { PlanOffer } from "#lib/purchasing/plan/plan-offer";

/** Between two numbers of packs, goods cost `fixedMinor + packs * slopeMinor`. */
export type PriceTier = {
  readonly fromPacks: number;
  readonly toPacks: number;
  readonly fixedMinor: number;
  readonly slopeMinor: number;
};

/**
 * The price steps of an offer as stretches on which the price is a straight line. With all-units steps the
 * step reached prices every pack, so nothing is fixed; with incremental ones the packs below it keep theirs.
 *
 * @param offer an offer with price steps
 * @param mostPacks tiers that begin above it are left out, the last one ends there
 * @returns tiers, rising
 * @source formula B_j = sum of (c_i-1 - c_i)(b_i - 1) over the steps passed: incremental discount, from memory
 * @example priceTiers({ ...offer, kind: "all-units", steps: [{ fromPacks: 1, priceMinor: 500 }] }, 9)
 */
export function priceTiers(offer: PlanOffer, mostPacks: number): PriceTier[] {
  let fixedMinor = 0;
  const steps = offer.steps ?? [];
  return steps.flatMap((step, index) => {
    const before = steps[index - 1];
    if (before !== undefined && offer.kind === "incremental") {
      fixedMinor += (before.priceMinor - step.priceMinor) * (step.fromPacks - 1);
    }
    if (step.fromPacks > mostPacks) return [];
    const next = steps[index + 1]?.fromPacks ?? Number.POSITIVE_INFINITY;
    const toPacks = Math.min(mostPacks, next - 1);
    return [{ fromPacks: step.fromPacks, toPacks, fixedMinor, slopeMinor: step.priceMinor }];
  });
}

/**
 * What so many packs of one order cost: whole minor units, straight from the price steps.
 *
 * @param offer an offer with price steps
 * @param packs whole packs, 0 for none
 * @returns minor units
 * @throws RangeError when the offer has no price, or sells no order as small
 * @example packsMinor({ ...offer, kind: "incremental", steps: [one at 500, from 4 at 450] }, 5) // 2400
 */
export function packsMinor(offer: PlanOffer, packs: number): number {
  if (packs === 0) return 0;
  const tier = priceTiers(offer, Number.POSITIVE_INFINITY).find(
    ({ fromPacks, toPacks }) => fromPacks <= packs && packs <= toPacks,
  );
  if (tier === undefined) {
    throw new RangeError(`packsMinor requires packs that offer ${offer.id} prices, got ${packs}`);
  }
  return tier.fixedMinor + packs * tier.slopeMinor;
}
