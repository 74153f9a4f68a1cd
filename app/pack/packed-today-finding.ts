import { countWord } from "./parcel-words";

/**
 * The first line of Pack: how far the day has come.
 * @param parcels packed today
 * @returns one sentence
 * @example packedTodayFinding(3) // "Three parcels packed today."
 */
export function packedTodayFinding(parcels: number): string {
  if (parcels <= 0) return "Nothing packed yet today.";
  const word = countWord(parcels);
  return `${word.charAt(0).toUpperCase()}${word.slice(1)} ${parcels === 1 ? "parcel" : "parcels"} packed today.`;
}
