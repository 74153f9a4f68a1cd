import { holdsOn } from "#lib/postage/card-on";
import { priceLadder } from "#lib/postage/price-ladder";
import type { ParcelQuestion, StepHit } from "#lib/postage/rated-parcel";
import { compareRatios } from "#lib/postage/ratio";
import { type StepChance, stepOdds } from "#lib/postage/step-odds";
import { type SpreadBasis, spreadTop, type WeightSpread } from "#lib/postage/weight-spread";

/** How many of the parcels go to a zone; shares need not add up to 1. */
export type ZoneShare = { readonly zone: string; readonly share: number };

/** A parcel whose weight and zone are not known yet. */
export type ExpectedQuestion = Omit<ParcelQuestion, "weight" | "zone"> & {
  readonly zones: readonly ZoneShare[];
  readonly spread: WeightSpread;
};

/** Odds of one step over all zones. */
export type StepOdds = {
  readonly step: StepHit;
  /** that this step is paid */
  readonly chance: number;
  /** that this step or a lighter one is paid: the odds of staying under it */
  readonly upTo: number;
  /** what it costs, fees and all, on average over the shares of the zones that have it; null if none of these has a share */
  readonly minor: number | null;
};

/** Postage of one zone. */
type ZonePostage = {
  readonly zone: string;
  /** of all parcels, 0 to 1 */
  readonly share: number;
  /** expected, of what is carried; null if nothing is; minor units, not rounded */
  readonly minor: number | null;
  readonly notCarried: number;
};

/** What a parcel will cost on average, and the odds under each step. */
export type ExpectedPostage =
  | {
      readonly kind: "expected";
      /** of what is carried; null if nothing is; minor units, not rounded */
      readonly minor: number | null;
      /** chance that the card does not take the parcel or has no price for it */
      readonly notCarried: number;
      readonly zones: readonly ZonePostage[];
      /** lightest first */
      readonly steps: readonly StepOdds[];
      /** where the spread of the weight comes from: a guess stays one */
      readonly basis: SpreadBasis;
    }
  | { readonly kind: "noCard" }
  | { readonly kind: "noZone"; readonly zone: string };

type ZoneOdds = ReturnType<typeof stepOdds> & ZoneShare;

/**
 * Expected postage over what a parcel may weigh and where it may go: each step's price times its chance.
 *
 * @param question card, shares of zones, spread of the packed weight, sizes and day
 * @throws RangeError if a share is below zero or none is above it
 */
export function expectedPostage(question: ExpectedQuestion): ExpectedPostage {
  const { card, size, shipDay, spread } = question;
  if (!holdsOn(card, shipDay)) return { kind: "noCard" };
  const lost = question.zones.find(({ zone }) => !card.zones.includes(zone));
  if (lost !== undefined) return { kind: "noZone", zone: lost.zone };
  const odds = wholeShares(question.zones).map(({ zone, share }): ZoneOdds => {
    const ladder = priceLadder({ card, zone, size, shipDay }, spreadTop(spread));
    return { zone, share, ...stepOdds(ladder, spread) };
  });
  const carried = odds.map((each) => each.share * carriedOf(each.steps));
  const paid = odds.map((each) => each.share * paidFor(each.steps));
  return {
    kind: "expected",
    minor: meanOf(total(paid), total(carried)),
    notCarried: total(odds.map((each) => each.share * each.notCarried)),
    zones: odds.map(({ zone, share, steps, notCarried }) => ({
      zone,
      share,
      minor: meanOf(paidFor(steps), carriedOf(steps)),
      notCarried,
    })),
    steps: oddsOverZones(odds),
    basis: spread.basis,
  };
}

function wholeShares(zones: readonly ZoneShare[]): ZoneShare[] {
  const sum = total(zones.map(({ share }) => share));
  if (!(sum > 0 && zones.every(({ share }) => share >= 0))) {
    throw new RangeError(
      `expectedPostage requires shares from 0, one above it, got ${JSON.stringify(zones)}`,
    );
  }
  return zones.map(({ zone, share }) => ({ zone, share: share / sum }));
}

function paidFor(steps: readonly StepChance[]): number {
  return total(steps.map(({ chance, minor }) => chance * minor));
}

/** Added up from the steps: 1 - notCarried may be a little over nothing where there is no step at all. */
function carriedOf(steps: readonly StepChance[]): number {
  return total(steps.map(({ chance }) => chance));
}

function meanOf(sum: number, weight: number): number | null {
  return weight > 0 ? sum / weight : null;
}

function oddsOverZones(zones: readonly ZoneOdds[]): StepOdds[] {
  const byStep = new Map<string, (StepChance & { readonly share: number })[]>();
  for (const { share, steps } of zones) {
    for (const each of steps) {
      const key = `${each.step.bandAt} ${each.step.stepAt} ${each.step.further}`;
      byStep.set(key, [...(byStep.get(key) ?? []), { share, ...each }]);
    }
  }
  let upTo = 0;
  return [...byStep.values()]
    .flatMap((same) => (same[0] === undefined ? [] : [{ step: same[0].step, same }]))
    .toSorted((a, b) => compareRatios(a.step.upToNg, b.step.upToNg) || a.step.bandAt - b.step.bandAt)
    .map(({ step, same }) => {
      const chance = total(same.map((each) => each.share * each.chance));
      upTo += chance;
      const shares = total(same.map(({ share }) => share));
      const minor = meanOf(total(same.map((each) => each.share * each.minor)), shares);
      return { step, chance, upTo: Math.min(1, upTo), minor };
    });
}

function total(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}
