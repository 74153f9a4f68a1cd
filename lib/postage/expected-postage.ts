import { holdsOn } from "#lib/postage/card-on";
import { priceLadders } from "#lib/postage/price-ladder";
import type { ParcelQuestion } from "#lib/postage/rated-parcel";
import { compareRatios } from "#lib/postage/ratio";
import type { StepHit } from "#lib/postage/step-for";
import { type StepChance, stepOdds } from "#lib/postage/step-odds";
import { type SpreadBasis, spreadTop, spreadUpTo, type WeightSpread } from "#lib/postage/weight-spread";

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
  const shares = wholeShares(question.zones);
  const ladders = priceLadders(
    { card, size, shipDay },
    shares.map(({ zone }) => zone),
    spreadTop(spread),
  );
  const known = rememberedSpread(spread);
  const odds = shares.map((each, at): ZoneOdds => ({ ...each, ...stepOdds(ladders[at] ?? [], known) }));
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

/** The same spread, asked once for each limit: zones have most of theirs in common. */
function rememberedSpread(spread: WeightSpread): WeightSpread {
  const known = new Map<number, number>();
  const upTo = (mg: number): number => {
    const before = known.get(mg);
    if (before !== undefined) return before;
    const chance = spreadUpTo(spread, mg);
    known.set(mg, chance);
    return chance;
  };
  return { kind: "cumulative", upTo, topMg: spreadTop(spread), basis: spread.basis };
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
  let sum = 0;
  for (const { chance, minor } of steps) sum += chance * minor;
  return sum;
}

/** Added up from the steps: 1 - notCarried may be a little over nothing where there is no step at all. */
function carriedOf(steps: readonly StepChance[]): number {
  let sum = 0;
  for (const { chance } of steps) sum += chance;
  return sum;
}

function meanOf(sum: number, weight: number): number | null {
  return weight > 0 ? sum / weight : null;
}

/** Sums over the zones that have a step. */
type StepSums = { chance: number; shares: number; paid: number };

/** The ladders of one question have the same object for the same step. */
function oddsOverZones(zones: readonly ZoneOdds[]): StepOdds[] {
  const byStep = new Map<StepHit, StepSums>();
  for (const { share, steps } of zones) {
    for (const { step, chance, minor } of steps) {
      let sums = byStep.get(step);
      if (sums === undefined) {
        sums = { chance: 0, shares: 0, paid: 0 };
        byStep.set(step, sums);
      }
      sums.chance += share * chance;
      sums.shares += share;
      sums.paid += share * minor;
    }
  }
  let upTo = 0;
  return [...byStep]
    .toSorted(([a], [b]) => compareRatios(a.upToNg, b.upToNg) || a.bandAt - b.bandAt)
    .map(([step, { chance, shares, paid }]) => {
      upTo += chance;
      return { step, chance, upTo: Math.min(1, upTo), minor: meanOf(paid, shares) };
    });
}

function total(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}
