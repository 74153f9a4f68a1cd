import { nanogramsOf } from "#lib/postage/exact-mass";
import type { RateBand } from "#lib/postage/rate-card";
import { compareRatios, ratio, ratioProduct, ratioSum } from "#lib/postage/ratio";
import { coveringParts } from "#lib/postage/ratio-rounding";
import { type MinorUnits, minorUnits } from "#lib/units/money";
import type { Ratio } from "#lib/units/number-text";

/** The step that a parcel pays. */
export type StepHit = {
  readonly band: RateBand;
  readonly bandAt: number;
  readonly stepAt: number;
  /** units begun beyond the last step */
  readonly further: number;
  /** what may be weighed at most for this price, in nanograms */
  readonly upToNg: Ratio;
};

const LIMITS = new WeakMap<RateBand, readonly Ratio[]>();

/**
 * The limits of a band's steps in nanograms; worked out once for each band.
 *
 * @param band of a card
 * @returns in the order of its steps
 */
export function stepLimits(band: RateBand): readonly Ratio[] {
  const known = LIMITS.get(band);
  if (known !== undefined) return known;
  const limits = band.steps.map(({ upTo }) => nanogramsOf(upTo));
  LIMITS.set(band, limits);
  return limits;
}

/**
 * The step of a band for a billed weight.
 *
 * @param band of a card, its steps lightest first
 * @param bandAt its place on the card
 * @param ng billed weight, nanograms
 * @returns null where the weight is beyond the last step and the band carries no more
 */
export function stepFor(band: RateBand, bandAt: number, ng: Ratio): StepHit | null {
  const limits = stepLimits(band);
  const found = limits.findIndex((limit) => compareRatios(ng, limit) <= 0);
  const stepAt = found === -1 ? limits.length - 1 : found;
  const upToNg = limits[stepAt];
  if (upToNg === undefined) return null;
  if (found !== -1) return { band, bandAt, stepAt, further: 0, upToNg };
  if (band.beyond.kind === "notCarried") return null;
  const each = nanogramsOf(band.beyond.each);
  const over = ratioSum(ng, ratioProduct(ratio(-1n), upToNg));
  const further = coveringParts(over, each);
  const furthest = ratioSum(upToNg, ratioProduct(ratio(BigInt(further)), each));
  return { band, bandAt, stepAt, further, upToNg: furthest };
}

/**
 * What a step costs in a zone, without fees.
 *
 * @param step of a card
 * @param zoneAt place of the zone on the card
 * @returns minor units; null where the carrier gives no price
 */
export function stepPrice({ band, stepAt, further }: StepHit, zoneAt: number): MinorUnits | null {
  const price = band.steps[stepAt]?.prices[zoneAt] ?? null;
  if (price === null || further === 0 || band.beyond.kind === "notCarried") return price;
  const each = band.beyond.prices[zoneAt] ?? null;
  return each === null ? null : minorUnits(price + further * each);
}
