import { type BillableWeight, dimensionalNanograms } from "#lib/postage/billable-weight";
import { holdsOn } from "#lib/postage/card-on";
import { nanogramsOf } from "#lib/postage/exact-mass";
import { type ChargedFee, chargedFees, fallingFees, type ZoneFee, zoneFees } from "#lib/postage/parcel-fees";
import type { RateCard } from "#lib/postage/rate-card";
import type { RateFee } from "#lib/postage/rate-fee";
import { type ParcelQuestion, type Rating, ratedParcel } from "#lib/postage/rated-parcel";
import { compareRatios, ratio } from "#lib/postage/ratio";
import { rounded } from "#lib/postage/ratio-rounding";
import { wallsHit } from "#lib/postage/size-walls";
import { type StepHit, stepPrice } from "#lib/postage/step-for";
import { type BandLimits, type WeightLimits, weightLimits } from "#lib/postage/weight-limits";
import { minorUnits } from "#lib/units/money";
import type { Ratio } from "#lib/units/number-text";

/** One answer for all packed weights over the rung before and not over this one. */
export type Rung = {
  /** milligrams; infinite for the last */
  readonly upToMg: number;
  readonly rating: Rating;
};

type LadderQuestion = Omit<ParcelQuestion, "weight">;

/**
 * What a parcel of given size costs at every packed weight: the price changes only at the card's steps, its walls and its
 * further units, so one rating at each of these limits tells them all.
 *
 * @param question all but the weight
 * @param untilMg milligrams up to which further units are told; the last rung goes on from there
 * @returns lightest first; no two neighbours with the same answer
 * @throws RangeError if there would be more than 100,000 rungs
 */
export function priceLadder({ zone, ...question }: LadderQuestion, untilMg: number): Rung[] {
  return priceLadders(question, [zone], untilMg)[0] ?? [];
}

/**
 * The ladders of several zones: bands, steps and billed weights are found once for all of them.
 *
 * @param question all but weight and zone
 * @param zones labels of the card
 * @param untilMg milligrams up to which further units are told
 * @returns a ladder for each zone
 * @throws RangeError if there would be more than 100,000 rungs
 */
export function priceLadders(
  question: Omit<LadderQuestion, "zone">,
  zones: readonly string[],
  untilMg: number,
): Rung[][] {
  const { card, size, shipDay } = question;
  const limits = weightLimits(card, untilMg);
  const falling = fallingFees(card.fees, { size, shipDay });
  const found = new Map<boolean, readonly (Hit | null)[]>();
  return zones.map((zone) => {
    const zoneAt = card.zones.indexOf(zone);
    if (!holdsOn(card, shipDay) || zoneAt < 0) {
      return [{ upToMg: Number.POSITIVE_INFINITY, rating: ratingAt({ ...question, zone }, limits, -1) }];
    }
    const isCounted = isRuleCounted(card, zone);
    const hits = found.get(isCounted) ?? hitsOf(question, limits, isCounted);
    found.set(isCounted, hits);
    return zoneLadder({ ...question, zone }, limits, hits, falling);
  });
}

/** The step that a parcel of the size pays at a limit, and how its weight was billed. */
type Hit = { readonly step: StepHit; readonly billed: BillableWeight };

function isRuleCounted({ dimensional }: RateCard, zone: string): boolean {
  return dimensional !== null && (dimensional.zones === null || dimensional.zones.includes(zone));
}

/** By limit; null where no band takes the parcel. */
function hitsOf(
  { card, size }: Omit<LadderQuestion, "zone">,
  limits: WeightLimits,
  isCounted: boolean,
): (Hit | null)[] {
  const weightless = { ng: ratio(0n), text: "" };
  const bySize =
    size === null || card.dimensional === null || !isCounted
      ? null
      : dimensionalNanograms(size, card.dimensional);
  const billed =
    bySize === null || card.roundUpTo === null
      ? bySize
      : rounded(bySize, { kind: "up", to: nanogramsOf(card.roundUpTo) });
  const heavierFrom = bySize === null ? 0 : limits.ng.findIndex((ng) => compareRatios(ng, bySize) >= 0);
  const reached = heavierFrom === -1 ? limits.ng.length : heavierFrom;
  const bands = card.bands.flatMap(({ walls, countsSize }, at): TakenBand[] => {
    const band = limits.bands[at];
    if (band === undefined || wallsHit({ ...walls, weight: null }, size, weightless).length > 0) return [];
    if (!countsSize || billed === null) return [{ ...band, reached: 0, sized: null }];
    const step = band.stepAt(billed);
    const sized: Hit | null = step === null ? null : { step, billed: { ng: billed, from: "dimensional" } };
    return [{ ...band, reached, sized }];
  });
  return limits.billedNg.map((ng, at) => {
    for (const band of bands) {
      const hit = hitIn(band, ng, at);
      if (hit !== null) return hit;
    }
    return null;
  });
}

/** A band that takes the size. */
type TakenBand = BandLimits & {
  /** limits before this one are lighter than the parcel is by its size, which pays `sized` then */
  readonly reached: number;
  readonly sized: Hit | null;
};

function hitIn(band: TakenBand, ng: Ratio, at: number): Hit | null {
  if (at >= band.within) return null;
  if (at < band.reached) return band.sized;
  const step = band.steps[at] ?? null;
  return step === null ? null : { step, billed: { ng, from: "packed" } };
}

function zoneLadder(
  question: LadderQuestion,
  limits: WeightLimits,
  hits: readonly (Hit | null)[],
  falling: readonly RateFee[],
): Rung[] {
  const zoneAt = question.card.zones.indexOf(question.zone);
  const feesAt = feesByStep(zoneFees(falling, question.zone));
  const rungs: Rung[] = [];
  for (const [at, hit] of hits.entries()) {
    const stepMinor = hit === null ? null : stepPrice(hit.step, zoneAt);
    const above = hits[at + 1];
    const isSame = hit === null ? above === null : stepMinor !== null && above?.step === hit.step;
    if (isSame) continue;
    const upToMg = limits.mg[at] ?? Number.POSITIVE_INFINITY;
    if (hit === null || stepMinor === null) {
      rungs.push({ upToMg, rating: ratingAt(question, limits, at) });
      continue;
    }
    const { fees, minor } = feesAt(hit.step);
    const { step, billed } = hit;
    rungs.push({
      upToMg,
      rating: { kind: "priced", minor: minorUnits(stepMinor + minor), stepMinor, step, billed, fees },
    });
  }
  return rungs;
}

type SummedFees = { readonly fees: readonly ChargedFee[]; readonly minor: number };

/** Most fees are the same at any weight: then they are summed once. */
function feesByStep(fees: readonly ZoneFee[]): (step: StepHit) => SummedFees {
  const at = ({ upToNg }: Pick<StepHit, "upToNg">): SummedFees => {
    const charged = chargedFees(fees, upToNg);
    return { fees: charged, minor: charged.reduce((sum, fee) => sum + fee.minor, 0) };
  };
  if (fees.some(({ rows }) => rows[0]?.upTo !== null)) return at;
  const same = at({ upToNg: ratio(0n) });
  return () => same;
}

function ratingAt(question: LadderQuestion, { ng }: WeightLimits, at: number): Rating {
  return ratedParcel({ ...question, weight: { ng: ng.at(at) ?? ratio(0n), text: "" } });
}
