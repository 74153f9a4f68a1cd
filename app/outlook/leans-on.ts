import type { SubjectForecast } from "#lib/forecast/shop/subject-forecast";
import { countWord } from "../pack/parcel-words";
import { shareWords } from "./share-words";

/** From so many full weeks on a forecast no longer warns of its youth. */
const ENOUGH_WEEKS = 8;

/**
 * What a forecast leans on while there is little to go by.
 *
 * @param forecast weeks seen, guessed share and the item type it starts from
 * @param known the seller's guess, and the name of that item type
 * @returns null where the records carry it
 * @example leansOn({ weeksSeen: 2, guessedShare: 0.5, likeId: null }, { guessedParcels: 10, likeName: null })
 * // "Two weeks of records: half of this number is still your guess of 10 parcels a week."
 */
export function leansOn(
  { weeksSeen, guessedShare, likeId }: Pick<SubjectForecast, "weeksSeen" | "guessedShare" | "likeId">,
  { guessedParcels, likeName }: { readonly guessedParcels: number | null; readonly likeName: string | null },
): string | null {
  const weeks = weeksWords(weeksSeen);
  if (likeId !== null) {
    return `${weeks}: it starts from ${likeName ?? likeId}, the item type nearest in weight, and ${shareWords(guessedShare)} of it is still that.`;
  }
  if (guessedShare > 0 && guessedParcels !== null) {
    return `${weeks}: ${shareWords(guessedShare)} of this number is still your guess of ${guessedParcels} ${guessedParcels === 1 ? "parcel" : "parcels"} a week.`;
  }
  return weeksSeen <= ENOUGH_WEEKS ? `${weeks}: take this number with care.` : null;
}

function weeksWords(weeks: number): string {
  if (weeks === 0) return "No full week of records yet";
  const word = countWord(weeks);
  return `${word.slice(0, 1).toUpperCase()}${word.slice(1)} ${weeks === 1 ? "week" : "weeks"} of records`;
}
