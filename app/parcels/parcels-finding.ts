import { countWord } from "../pack/parcel-words";

/** What the first line of Parcels tells. */
export type ParcelsSeen = {
  /** Parcels of the week before this one, voided ones left out. */
  readonly lastWeek: number;
  readonly thisWeek: number;
  /** Of last week's and this week's parcels, those that came back or arrived broken. */
  readonly broken: number;
};

/**
 * The first line of Parcels: how many went out, and what broke.
 * @param seen counts of last week and this week
 * @returns one or two short clauses
 * @example parcelsFinding({ lastWeek: 17, thisWeek: 4, broken: 2 }) // "17 parcels last week, four this week; two arrived broken."
 */
export function parcelsFinding({ lastWeek, thisWeek, broken }: ParcelsSeen): string {
  if (lastWeek === 0 && thisWeek === 0) return "No parcels last week and none this week.";
  const sent = `${capital(countWord(lastWeek))} ${lastWeek === 1 ? "parcel" : "parcels"} last week, ${
    thisWeek === 0 ? "none" : countWord(thisWeek)
  } this week`;
  return `${sent}; ${broken === 0 ? "nothing" : countWord(broken)} arrived broken.`;
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
