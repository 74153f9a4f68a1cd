/** Whether a carton moves, is slow, sits, or is too new to tell. */
export type AgeingClass = "moves" | "slow" | "sits" | "tooNew";

/** From when on a carton is slow, and from when on it sits: weeks without use, or months that the stock would last. */
export type AgeingSettings = {
  readonly slow: { readonly silentWeeks: number; readonly coverMonths: number };
  readonly sits: { readonly silentWeeks: number; readonly coverMonths: number };
};

/** Conventions, not science; each shop sets its own. Eight weeks without use is what sellers ask about each month. */
export const AGEING: AgeingSettings = {
  slow: { silentWeeks: 8, coverMonths: 6 },
  sits: { silentWeeks: 26, coverMonths: 24 },
};

/**
 * The class of a carton: the worse one of what its silence and its cover say.
 *
 * @param carton whole open weeks since it was last used, or since it is watched; months of cover, null where nothing was
 *   used of late; whether it was ever used
 * @param settings of the shop
 * @returns the class; too new where it was never used and not watched until it would be slow
 * @throws RangeError if a setting for slow is beyond the one for sitting
 * @see common practice, no source
 * @example ageingClass({ silentWeeks: 9, coverMonths: 2, wasUsed: true }) // "slow"
 */
export function ageingClass(
  carton: {
    readonly silentWeeks: number;
    readonly coverMonths: number | null;
    readonly wasUsed: boolean;
  },
  settings: AgeingSettings = AGEING,
): AgeingClass {
  const { slow, sits } = settings;
  if (!(slow.silentWeeks <= sits.silentWeeks && slow.coverMonths <= sits.coverMonths)) {
    throw new RangeError(
      `ageingClass requires slow before sitting, got ${JSON.stringify(slow)} and ${JSON.stringify(sits)}`,
    );
  }
  const reaches = ({ silentWeeks, coverMonths }: AgeingSettings["slow"]) =>
    carton.silentWeeks >= silentWeeks || (carton.coverMonths ?? 0) >= coverMonths;
  if (!carton.wasUsed && carton.silentWeeks < slow.silentWeeks) return "tooNew";
  if (reaches(sits)) return "sits";
  return reaches(slow) ? "slow" : "moves";
}
