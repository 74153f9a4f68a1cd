import type { Estimate } from "#lib/replenishment/simulation/estimate";
import type { TrialFigures } from "#lib/replenishment/trial/trial-figures";

/** Which of the two has less of something; "alike" where chance alone could make the difference. */
export type Less = "present" | "tried" | "alike";

/** What a trial found. */
export type TrialVerdict = {
  /** which costs less */
  readonly cheaper: Less;
  /** which is out of stock on fewer days */
  readonly safer: Less;
};

/** A difference this many standard errors from 0 is more than chance, 19 times in 20. */
export const SURE_ERRORS = 2;
/** Rounding of sums is no difference. */
const NOTHING = 1e-6;

/**
 * Which of two settings is cheaper and which is safer.
 *
 * @param difference the tried setting less the present one
 * @returns the verdict
 * @see two standard errors: a 95 % confidence interval of a mean, rounded (common practice)
 * @example trialVerdict(difference) // { cheaper: "tried", safer: "present" }
 */
export function trialVerdict(difference: Pick<TrialFigures, "cost" | "daysOut">): TrialVerdict {
  return { cheaper: less(difference.cost), safer: less(difference.daysOut) };
}

/**
 * Which of two settings has less of something.
 *
 * @param difference the tried setting less the present one
 * @returns "alike" where the difference is within two standard errors, or that error is not known
 * @example less({ mean: -3, standardError: 1 }) // "tried"
 */
export function less({ mean, standardError }: Estimate): Less {
  if (!(Math.abs(mean) > Math.max(NOTHING, SURE_ERRORS * standardError))) return "alike";
  return mean < 0 ? "tried" : "present";
}
