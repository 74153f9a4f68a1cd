/**
 * How many parcels went out last week, as a sentence.
 *
 * @param parcels - parcels packed in the week before this one
 * @returns the sentence
 * @example weekWords(1) // "One parcel was packed last week."
 */
export function weekWords(parcels: number): string {
  if (parcels === 0) return "No parcel was packed last week.";
  return parcels === 1 ? "One parcel was packed last week." : `${parcels} parcels were packed last week.`;
}
