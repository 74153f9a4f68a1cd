import { milligramsOf, nanogramsOf } from "#lib/postage/exact-mass";
import type { RateBand, RateCard } from "#lib/postage/rate-card";
import { compareRatios, ratio, ratioProduct, ratioSum } from "#lib/postage/ratio";
import { rounded } from "#lib/postage/ratio-rounding";
import { type StepHit, stepFor, stepLimits } from "#lib/postage/step-for";
import type { Ratio } from "#lib/units/number-text";

/** What the packed weight alone says of a card at each weight where its answer may change. */
export type WeightLimits = {
  /** packed weights in nanograms, lightest first; the last one stands for all that is heavier */
  readonly ng: readonly Ratio[];
  /** the same in milligrams; infinite for the last */
  readonly mg: readonly number[];
  /** billed weights of these, where size does not count */
  readonly billedNg: readonly Ratio[];
  readonly bands: readonly BandLimits[];
};

/** What the packed weight alone says of a band. */
export type BandLimits = {
  /** the step at each limit, where size does not count; null beyond the last */
  readonly steps: readonly (StepHit | null)[];
  /** the first limits, up to this number of them, are within the band's own most weight */
  readonly within: number;
  /** the step for any other billed weight: the same object for the same step */
  readonly stepAt: (ng: Ratio) => StepHit | null;
};

/** More rungs than any card has; further units far too small for the weight would never end. */
const MOST_RUNGS = 100_000;
/** Past the last limit. */
const ONE_MILLIGRAM = ratio(1_000_000n);

const KNOWN = new WeakMap<RateCard, { readonly furthest: string; readonly limits: WeightLimits }>();

/**
 * The limits of a card; worked out once for each card, and again only where further units must reach farther.
 *
 * @param card whose steps are lightest first
 * @param untilMg milligrams up to which further units are told
 * @throws RangeError if there would be more than 100,000 of them
 */
export function weightLimits(card: RateCard, untilMg: number): WeightLimits {
  const furthers = card.bands.map((band) => furtherCount(band, untilMg));
  const furthest = furthers.join();
  const known = KNOWN.get(card);
  if (known?.furthest === furthest) return known.limits;
  const limits = limitsOf(card, furthers);
  KNOWN.set(card, { furthest, limits });
  return limits;
}

function limitsOf(card: RateCard, furthers: readonly number[]): WeightLimits {
  const each = card.bands.flatMap((band, at) => bandLimits(band, furthers[at] ?? 0));
  const roundUpTo = card.roundUpTo === null ? null : nanogramsOf(card.roundUpTo);
  // A weight that is rounded up stays within a limit up to the last whole multiple before it.
  const whole = roundUpTo === null ? [] : each.map((one) => rounded(one, { kind: "down", to: roundUpTo }));
  const limits = [...each, ...whole]
    .toSorted(compareRatios)
    .filter((one, at, all) => at === 0 || compareRatios(one, all[at - 1] ?? one) > 0);
  const ng = [...limits, ratioSum(limits.at(-1) ?? ratio(0n), ONE_MILLIGRAM)];
  const billedNg = roundUpTo === null ? ng : ng.map((one) => rounded(one, { kind: "up", to: roundUpTo }));
  return {
    ng,
    mg: [...limits.map(milligramsOf), Number.POSITIVE_INFINITY],
    billedNg,
    bands: card.bands.map((band, at) => {
      const stepAt = sameStep(band, at);
      const most = band.walls.weight === null ? null : nanogramsOf(band.walls.weight);
      const beyond = most === null ? -1 : ng.findIndex((one) => compareRatios(one, most) > 0);
      return { steps: billedNg.map(stepAt), within: beyond === -1 ? ng.length : beyond, stepAt };
    }),
  };
}

/** The same step is the same object, so that steps are compared at once. */
function sameStep(band: RateBand, bandAt: number): (ng: Ratio) => StepHit | null {
  const known = new Map<string, StepHit>();
  return (ng) => {
    const step = stepFor(band, bandAt, ng);
    if (step === null) return null;
    const key = `${step.stepAt} ${step.further}`;
    const same = known.get(key);
    if (same !== undefined) return same;
    known.set(key, step);
    return step;
  };
}

/** How many further units are told: until the weight is reached. */
function furtherCount(band: RateBand, untilMg: number): number {
  const last = stepLimits(band).at(-1);
  if (band.beyond.kind === "notCarried" || last === undefined) return 0;
  const each = nanogramsOf(band.beyond.each);
  let count = 0;
  for (
    let ng = last;
    milligramsOf(ng) < untilMg;
    ng = ratioSum(last, ratioProduct(ratio(BigInt(count)), each))
  ) {
    count += 1;
    if (count > MOST_RUNGS) {
      throw new RangeError(`priceLadder requires up to ${MOST_RUNGS} rungs, got more to ${untilMg} mg`);
    }
  }
  return count;
}

function bandLimits(band: RateBand, furthers: number): Ratio[] {
  const { walls, beyond } = band;
  const limits = stepLimits(band);
  const last = limits.at(-1);
  const each = beyond.kind === "notCarried" ? null : nanogramsOf(beyond.each);
  const further = Array.from({ length: last === undefined || each === null ? 0 : furthers }, (_, at) =>
    ratioSum(last ?? ratio(0n), ratioProduct(ratio(BigInt(at + 1)), each ?? ratio(0n))),
  );
  return [...limits, ...further, ...(walls.weight === null ? [] : [nanogramsOf(walls.weight)])];
}
