import type { Rung } from "#lib/postage/price-ladder";
import type { StepHit } from "#lib/postage/step-for";
import { spreadUpTo, type WeightSpread } from "#lib/postage/weight-spread";

/** How likely a parcel pays a step, and what the step costs there. */
export type StepChance = {
  readonly step: StepHit;
  readonly chance: number;
  /** step and fees, minor units */
  readonly minor: number;
};

/** All that a parcel may pay; the chances and `notCarried` add up to 1. */
type StepChances = {
  /** lightest first; steps that this parcel cannot pay are left out */
  readonly steps: readonly StepChance[];
  /** too heavy, too large, or without a price */
  readonly notCarried: number;
};

/**
 * The chance of each step, from what a parcel may weigh.
 *
 * @param ladder prices of the parcel at every weight
 * @param spread what it may weigh
 */
export function stepOdds(ladder: readonly Rung[], spread: WeightSpread): StepChances {
  const steps: StepChance[] = [];
  let notCarried = 0;
  let reached = 0;
  for (const { upToMg, rating } of ladder) {
    const upTo = spreadUpTo(spread, upToMg);
    if (rating.kind === "priced") {
      steps.push({ step: rating.step, chance: upTo - reached, minor: rating.minor });
    } else {
      notCarried += upTo - reached;
    }
    reached = upTo;
  }
  return { steps, notCarried };
}
