import { milligramsOf } from "#lib/postage/exact-mass";
import { priceLadder, type Rung } from "#lib/postage/price-ladder";
import type { ParcelQuestion } from "#lib/postage/rated-parcel";
import type { StepHit } from "#lib/postage/step-for";

/** A lighter step than the one that a parcel pays. */
export type LighterStep = {
  readonly step: StepHit;
  /** what the parcel would cost there, minor units */
  readonly minor: number;
  /** what that saves, minor units */
  readonly savedMinor: number;
  /** milligrams: how much lighter it must be */
  readonly mg: number;
};

/** The steps below and above, by the packed weight; null where there is none. */
export type NeighbourSteps = {
  /** the heaviest lighter one that costs less */
  readonly cheaper: LighterStep | null;
  /** what the next heavier one costs; `step` null: not carried there */
  readonly next: { readonly mg: number; readonly step: StepHit | null; readonly minor: number | null } | null;
};

/** Grams beyond the weight that are looked at for the next step. */
const LOOKED_AHEAD_MG = 50_000_000;

/**
 * What a little less or a little more weight would change.
 *
 * @param question of a parcel that has a price
 * @returns steps by the packed weight; where its size decides, losing weight changes nothing and there is none below
 */
export function neighbourSteps({ weight, ...question }: ParcelQuestion): NeighbourSteps {
  const mg = milligramsOf(weight.ng);
  const ladder = priceLadder(question, mg + LOOKED_AHEAD_MG);
  const at = ladder.findIndex(({ upToMg }) => mg <= upToMg);
  const own = ladder[at];
  if (own?.rating.kind !== "priced") return { cheaper: null, next: null };
  const { minor } = own.rating;
  const cheaper = ladder
    .slice(0, at)
    .findLast(({ rating }) => rating.kind === "priced" && rating.minor < minor);
  const above = ladder[at + 1];
  return {
    cheaper: cheaper === undefined ? null : lighter(cheaper, minor, mg),
    next: above === undefined ? null : { mg: own.upToMg - mg, ...stepAndPrice(above) },
  };
}

function lighter({ upToMg, rating }: Rung, minor: number, mg: number): LighterStep | null {
  if (rating.kind !== "priced") return null;
  return { step: rating.step, minor: rating.minor, savedMinor: minor - rating.minor, mg: mg - upToMg };
}

function stepAndPrice({ rating }: Rung): { readonly step: StepHit | null; readonly minor: number | null } {
  return rating.kind === "priced" ? { step: rating.step, minor: rating.minor } : { step: null, minor: null };
}
