import { guessedShare, type RateBelief, updatedBelief } from "#lib/forecast/rate-belief";
import type { ShopHistory } from "#lib/forecast/shop/shop-history";

/** A shop with no more full weeks than this is forecast from a belief that moves to the data. */
export const FIRST_WEEKS = 8;
/** The seller's guess weighs as much as so many weeks of records. A guess, no source. */
const WEEKS_OF_GUESS = 2;
/** Where nothing is guessed: half a parcel is believed to have come before the first (Jeffreys' prior). */
const PARCELS_OF_NO_GUESS = 0.5;
/** How much single weeks differ beyond chance (k), before any are seen; a guess, no source. */
const WEEK_DISPERSION = 0.25;
/** From so many weeks on they show how much they differ; the guess then weighs as much as one of them. */
const LEAST_WEEKS = 4;
/** A variance from n weeks may really be larger: it is taken 1 + 9 / (n - 1) times. A guess that held in simulation. */
const UNSURE_VARIANCE = 9;
/** Standard errors of chance that what stands out is held against. */
const NOISE_ERRORS = 2;

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
 * How much single weeks differ beyond chance, from few of them. Their variance is itself unsure, so it is taken larger;
 * what stands out beyond chance is believed as far as it stands out from what chance alone would show; and the guess
 * counts as one week more.
 *
 * @param values use of each full week as usual, oldest first
 * @param perUse what one use takes
 * @returns k of one week, from 0
 * @see moments of the negative binomial (NB2); the standard error of a variance, sqrt(2 / (n - 1)) of it (from memory)
 * @example weekDispersion([], 1) // 0.25
 */
export function weekDispersion(values: readonly number[], perUse: number): number {
  const weeks = values.length;
  const mean = values.reduce((sum, each) => sum + each, 0) / Math.max(1, weeks);
  if (weeks < LEAST_WEEKS || mean <= 0) return WEEK_DISPERSION;
  const squares = values.reduce((sum, each) => sum + (each - mean) ** 2, 0);
  const variance = (squares / (weeks - 1)) * (1 + UNSURE_VARIANCE / (weeks - 1));
  const seen = Math.max(0, variance - perUse * mean) / (mean * mean);
  const noise = NOISE_ERRORS * (perUse / mean) * Math.sqrt(2 / (weeks - 1));
  const own = seen === 0 ? 0 : (seen * seen) / (seen + noise);
  return (weeks * own + WEEK_DISPERSION) / (weeks + 1);
}

/**
 * k for sums of 1, 2, 3, ... weeks in the first weeks: the rate itself is uncertain, and weeks differ.
 *
 * 1 / events + week / weeks of belief + week / weeks of the sum
 *
 * @param belief events and weeks that the rate rests on, above 0, and k of one week
 * @param steps how many
 * @see gamma-Poisson: the count over w weeks is negative binomial with size `events`; weeks that differ make the rate
 *   as much less sure
 * @example firstWeeksDispersions({ events: 20, weeks: 5, week: 0.25 }, 2) // [0.35, 0.225]
 */
export function firstWeeksDispersions(
  { events, weeks, week }: { readonly events: number; readonly weeks: number; readonly week: number },
  steps: number,
): number[] {
  const rate = 1 / events + week / weeks;
  return Array.from({ length: steps }, (_, index) => rate + week / (index + 1));
}
