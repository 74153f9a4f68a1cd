import { setTimeout } from "node:timers/promises";
import type { TrialShop } from "#lib/replenishment/trial/trial-shop";
import { comingSpan, pastSpan } from "#lib/replenishment/trial/trial-span";
import { type TrialResult, trialSteps } from "#lib/replenishment/trial/trial-steps";
import { evenRandom } from "#lib/statistics/even-random";
import { type TrialSettings, termsOfSettings } from "./trial-form";

/** With 30 supplies about a second of work; the screen says how far chance can still move the figures. */
export const RUNS = 100;
/** An answer to someone else takes several turns of the event loop; this is time for some. */
const PAUSE_MS = 2;
/** The same settings on the same day come to the same figures. */
const SEED = 20_261_125;

/** What came of a trial. */
export type TrialOutcome =
  | { readonly kind: "played"; readonly result: TrialResult }
  /** less than a year is recorded */
  | { readonly kind: "no-past" }
  /** no supply can be played */
  | { readonly kind: "nothing" };

/**
 * Plays a trial step by step; between two steps the server answers others.
 *
 * @param shop the shop as it stands
 * @param question both settings, and whose weeks are played
 */
export async function playTrial(
  shop: TrialShop,
  question: {
    readonly present: TrialSettings;
    readonly tried: TrialSettings;
    readonly over: "coming" | "past";
  },
): Promise<TrialOutcome> {
  const span = question.over === "past" ? pastSpan(shop) : comingSpan(shop);
  if (span === null) return { kind: "no-past" };
  const steps = trialSteps(shop, {
    span,
    present: termsOfSettings(question.present),
    tried: termsOfSettings(question.tried),
    runs: RUNS,
    random: evenRandom(SEED),
  });
  let step = steps.next();
  while (!step.done) {
    await setTimeout(PAUSE_MS);
    step = steps.next();
  }
  return step.value === null ? { kind: "nothing" } : { kind: "played", result: step.value };
}
