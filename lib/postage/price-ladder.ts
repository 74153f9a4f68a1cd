import { milligramsOf, nanogramsOf } from "#lib/postage/exact-mass";
import type { RateBand, RateCard } from "#lib/postage/rate-card";
import { type ParcelQuestion, type Rating, ratedParcel } from "#lib/postage/rated-parcel";
import { compareRatios, ratio, ratioProduct, ratioSum } from "#lib/postage/ratio";
import { rounded } from "#lib/postage/ratio-rounding";
import type { Ratio } from "#lib/units/number-text";

/** One answer for all packed weights over the rung before and not over this one. */
export type Rung = {
  /** milligrams; infinite for the last */
  readonly upToMg: number;
  readonly rating: Rating;
};

/** More rungs than any card has; further units far too small for the weight would never end. */
const MOST_RUNGS = 100_000;
/** Past the last limit. */
const ONE_MILLIGRAM = ratio(1_000_000n);

/**
 * What a parcel of given size costs at every packed weight: the price changes only at the card's steps, its walls and its
 * further units, so one rating at each of these limits tells them all.
 *
 * @param question all but the weight
 * @param untilMg milligrams up to which further units are told; the last rung goes on from there
 * @returns lightest first; no two neighbours with the same answer
 * @throws RangeError if there would be more than 100,000 rungs
 */
export function priceLadder(question: Omit<ParcelQuestion, "weight">, untilMg: number): Rung[] {
  const limits = weightLimits(question.card, untilMg);
  const last = ratioSum(limits.at(-1) ?? ratio(0n), ONE_MILLIGRAM);
  const rungs = [
    ...limits.map((ng) => ({ upToMg: milligramsOf(ng), rating: ratingAt(question, ng) })),
    { upToMg: Number.POSITIVE_INFINITY, rating: ratingAt(question, last) },
  ];
  return rungs.filter((rung, at) => {
    const above = rungs[at + 1];
    return above === undefined || !isSameAnswer(rung.rating, above.rating);
  });
}

function ratingAt(question: Omit<ParcelQuestion, "weight">, ng: Ratio): Rating {
  return ratedParcel({ ...question, weight: { ng, text: "" } });
}

/** All packed weights at which the answer may change. */
function weightLimits(card: RateCard, untilMg: number): Ratio[] {
  const limits = card.bands.flatMap((band) => bandLimits(band, untilMg));
  const roundUpTo = card.roundUpTo === null ? null : nanogramsOf(card.roundUpTo);
  // A weight that is rounded up stays within a limit up to the last whole multiple before it.
  const whole = roundUpTo === null ? [] : limits.map((ng) => rounded(ng, { kind: "down", to: roundUpTo }));
  return [...limits, ...whole]
    .toSorted(compareRatios)
    .filter((ng, at, all) => at === 0 || compareRatios(ng, all[at - 1] ?? ng) > 0);
}

function bandLimits({ steps, walls, beyond }: RateBand, untilMg: number): Ratio[] {
  const limits = steps.map(({ upTo }) => nanogramsOf(upTo));
  const further: Ratio[] = [];
  const last = limits.at(-1);
  if (beyond.kind === "perFurther" && last !== undefined) {
    const each = nanogramsOf(beyond.each);
    for (let count = 1n; milligramsOf(further.at(-1) ?? last) < untilMg; count += 1n) {
      further.push(ratioSum(last, ratioProduct(ratio(count), each)));
      if (further.length > MOST_RUNGS) {
        throw new RangeError(`priceLadder requires up to ${MOST_RUNGS} rungs, got more to ${untilMg} mg`);
      }
    }
  }
  return [...limits, ...further, ...(walls.weight === null ? [] : [nanogramsOf(walls.weight)])];
}

function isSameAnswer(one: Rating, other: Rating): boolean {
  if (one.kind === "priced" && other.kind === "priced") {
    return one.step.bandAt === other.step.bandAt && compareRatios(one.step.upToNg, other.step.upToNg) === 0;
  }
  return one.kind === other.kind && one.kind !== "noPrice";
}
