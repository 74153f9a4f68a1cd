import { binomialInterval } from "#lib/statistics/binomial-interval";
import { hypergeometricTail } from "#lib/statistics/hypergeometric-tail";

/** What parcels may have in common. */
export type CommonTrait = "item-type" | "style" | "carton" | "recipe";

/** Parcels with a trait, and how many of them broke. */
export type TraitCount = {
  readonly trait: CommonTrait;
  /** id of the item type, carton or recipe; the style */
  readonly value: string;
  readonly parcels: number;
  readonly broken: number;
};

/** How parcels with a trait fared beside all others. */
export type BrokenInCommon = TraitCount & {
  readonly others: { readonly parcels: number; readonly broken: number };
  /** what their share of broken ones may truly be, 9 times in 10 */
  readonly low: number;
  readonly high: number;
  /** chance that one of all traits looked at shows so much by luck alone, at most 1 */
  readonly byLuck: number;
  readonly verdict: "stands-out" | "may-be-luck" | "too-few";
};

const LEVEL = 0.9;
/** Rarer by luck than once in twenty. */
const STANDS_OUT = 0.05;
/** With fewer broken parcels nothing can be told apart from luck. */
const LEAST_BROKEN = 3;

/**
 * What broken parcels had in common: each trait against the parcels without it, by the exact test of Fisher. Many traits
 * are looked at, and one of them always looks worst: the chance of luck is taken times their number (Bonferroni).
 *
 * @param counts parcels by trait; a parcel counts under each of its item types and recipes
 * @param all all parcels
 * @returns traits of broken parcels, the least likely by luck first
 * @throws RangeError when a trait has more parcels, or more broken ones, than there are
 * @example brokenInCommon([], { parcels: 0, broken: 0 }) // []
 */
export function brokenInCommon(
  counts: readonly TraitCount[],
  all: { readonly parcels: number; readonly broken: number },
): BrokenInCommon[] {
  // Where every parcel has it, there is nothing to hold it against.
  const looked = counts.filter(({ parcels }) => parcels > 0 && parcels < all.parcels);
  return looked
    .filter(({ broken }) => broken > 0)
    .map((count): BrokenInCommon => {
      const luck = hypergeometricTail(count.broken, {
        all: all.parcels,
        marked: all.broken,
        drawn: count.parcels,
      });
      const byLuck = Math.min(1, luck * looked.length);
      return {
        ...count,
        others: { parcels: all.parcels - count.parcels, broken: all.broken - count.broken },
        ...binomialInterval(count.broken, count.parcels, LEVEL),
        byLuck,
        verdict: verdictOf(all.broken, byLuck),
      };
    })
    .sort((a, b) => a.byLuck - b.byLuck || b.broken / b.parcels - a.broken / a.parcels);
}

function verdictOf(broken: number, byLuck: number): BrokenInCommon["verdict"] {
  if (broken < LEAST_BROKEN) return "too-few";
  return byLuck <= STANDS_OUT ? "stands-out" : "may-be-luck";
}
