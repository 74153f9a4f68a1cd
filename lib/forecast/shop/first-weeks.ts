import { guessedShare, type RateBelief, updatedBelief } from "#lib/forecast/rate-belief";
import type { ShopHistory } from "#lib/forecast/shop/shop-history";

/** A shop with no more full weeks than this is forecast from a belief that moves to the data. */
export const FIRST_WEEKS = 8;
/** The seller's guess weighs as much as so many weeks of records. A guess, no source. */
const WEEKS_OF_GUESS = 2;
/** Where nothing is guessed: half a parcel is believed to have come before the first (Jeffreys' prior). */
const PARCELS_OF_NO_GUESS = 0.5;
/** How much single weeks differ beyond chance (k); a guess, no source. */
const WEEK_DISPERSION = 0.25;

/** What is believed of a shop in its first weeks. */
export type FirstWeeks = {
  /** of parcels a week */
  readonly parcels: RateBelief;
  readonly guessedShare: number;
  readonly weeksSeen: number;
};

/**
 * Belief about a shop's parcels a week while it has 0 to 8 weeks of records: a gamma distribution that starts from the
 * seller's guess and moves to the records as they come.
 *
 * @param history what the records know
 * @param parcels parcels of each full week as usual, oldest first
 * @returns null where there is neither a guess nor a day of records
 * @see Jeffreys (1946) for the start without a guess (from memory)
 */
export function firstWeeks(history: ShopHistory, parcels: readonly number[]): FirstWeeks | null {
  const { guessedParcels, firstDays, itemTypes } = history;
  const packedInDays = itemTypes.reduce((sum, type) => sum + type.firstDays.parcels, 0);
  const weeks = parcels.length > 0 ? parcels.length : firstDays / 7;
  const counted = parcels.length > 0 ? parcels.reduce((sum, each) => sum + each, 0) : packedInDays;
  if (guessedParcels === null || guessedParcels <= 0) {
    if (weeks === 0) return null;
    return { parcels: unguessed(counted, weeks), guessedShare: 0, weeksSeen: parcels.length };
  }
  const guess: RateBelief = { events: guessedParcels * WEEKS_OF_GUESS, weeks: WEEKS_OF_GUESS };
  const now =
    parcels.length > 0
      ? updatedBelief(guess, parcels)
      : { events: guess.events + counted, weeks: guess.weeks + weeks };
  return { parcels: now, guessedShare: guessedShare(guess, now), weeksSeen: parcels.length };
}

/** The mean is that of what was counted; only how sure it is rests on the half parcel, and a shop without any parcel. */
function unguessed(counted: number, weeks: number): RateBelief {
  const events = counted + PARCELS_OF_NO_GUESS;
  return { events, weeks: counted > 0 ? (weeks * events) / counted : weeks };
}

/**
 * k for sums of 1, 2, 3, ... weeks in the first weeks: the rate itself is uncertain, and weeks differ.
 *
 * 1 / events + 0.25 / weeks of the sum
 *
 * @param events what the belief in the rate rests on, above 0
 * @param steps how many
 * @see gamma-Poisson: the count over w weeks is negative binomial with size `events`
 * @example firstWeeksDispersions(20, 2) // [0.3, 0.175]
 */
export function firstWeeksDispersions(events: number, steps: number): number[] {
  return Array.from({ length: steps }, (_, index) => 1 / events + WEEK_DISPERSION / (index + 1));
}
