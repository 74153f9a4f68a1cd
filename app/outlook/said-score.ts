import type { SaidSum } from "#lib/forecast/shop/subject-forecast";

const PERCENT = 100;
/** With fewer sums that do not overlap a share says little. */
const FEW_INDEPENDENT = 8;

/** How past sums came out. */
export type SaidScore = {
  readonly sums: number;
  /** sums that came out inside their band */
  readonly inside: number;
  /** sums for which what was called enough was enough */
  readonly lasted: number;
};

/**
 * Counts how past sums came out.
 *
 * @param said past sums as they would have been forecast, and what came
 */
export function saidScore(said: readonly SaidSum[]): SaidScore {
  return {
    sums: said.length,
    inside: said.filter(({ low, high, actual }) => low <= actual && actual <= high).length,
    lasted: said.filter(({ enough, actual }) => actual <= enough).length,
  };
}

/** Words for how past sums came out. */
export type SaidWords = { readonly finding: string; readonly aside: string };

/**
 * How past sums came out, in words.
 *
 * @param score counted sums, at least one
 * @param question weeks of a sum, and the service level per cent
 * @example saidWords({ sums: 40, inside: 33, lasted: 38 }, { horizonWeeks: 3, serviceLevel: 0.95 }).finding
 * // "Of 40 past sums of 3 weeks, 33 came out inside the band."
 */
export function saidWords(
  { sums, inside, lasted }: SaidScore,
  { horizonWeeks, serviceLevel }: { readonly horizonWeeks: number; readonly serviceLevel: number },
): SaidWords {
  const weeks = horizonWeeks === 1 ? "one week" : `${horizonWeeks} weeks`;
  const finding =
    sums === 1
      ? `The one past sum of ${weeks} came out ${inside === 1 ? "inside" : "outside"} the band.`
      : `Of ${sums} past sums of ${weeks}, ${inside} came out inside the band.`;
  const independent = sums / horizonWeeks;
  const few =
    independent < FEW_INDEPENDENT
      ? " So few sums say little of how good the forecast is; the band was drawn wider for it."
      : "";
  const overlap = horizonWeeks === 1 ? "" : " The sums overlap, so a bad month shows several times.";
  return {
    finding,
    aside: `That is ${perHundred(inside, sums)} in 100; 80 are meant. What would have been called enough was enough ${lasted} of ${sums} times, ${perHundred(lasted, sums)} in 100; ${Number((serviceLevel * PERCENT).toFixed(1))} are meant.${overlap}${few}`,
  };
}

function perHundred(part: number, whole: number): number {
  return Math.round((part / whole) * PERCENT);
}
