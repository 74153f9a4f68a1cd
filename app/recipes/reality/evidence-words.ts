import type { StepEvidence, UseFactor } from "#lib/packing/learning/recipe-evidence";
import type { CardStepToday, SupplyEvidence } from "#prisma/records/card-evidence";
import { listed } from "./listed";
import { cardName } from "./proposal-words";

const MOST_NAMED = 3;

/**
 * What the counts of a supply say of all its cards together.
 *
 * @param of a supply's evidence
 * @returns a sentence
 * @example supplyWords(paper) // "1.08 times the cards, truly 1.02 to 1.14, from 12 counts."
 */
export function supplyWords({ evidence: { total, counts } }: Pick<SupplyEvidence, "evidence">): string {
  const from = `from ${counts} ${counts === 1 ? "count" : "counts"} after the first`;
  if (total === null) return `no step of a card took it; ${from}.`;
  return `${timesWords(total, "the cards")}, ${from}.`;
}

/** One card's step, or steps that always go together, as the counts see it. */
export type StepLine = { readonly name: string; readonly words: string };

/**
 * What the counts say of single steps of the cards that hold.
 *
 * @param of a supply's evidence
 * @param steps of the cards that hold
 * @returns a line for each; earlier versions of cards are left out
 * @example stepLines(paper, steps)[0]?.words // "1.18 times the card, truly 1.11 to 1.26, from 8 counts."
 */
export function stepLines(
  { evidence }: Pick<SupplyEvidence, "evidence">,
  steps: ReadonlyMap<string, CardStepToday>,
): StepLine[] {
  return evidence.steps
    .filter(({ stepKeys }) => stepKeys.some((key) => steps.has(key)))
    .map((step) => ({ name: stepName(step.stepKeys, steps), words: stepWords(step, steps) }));
}

function stepWords(step: StepEvidence, steps: ReadonlyMap<string, CardStepToday>): string {
  const from = `${step.counts} ${step.counts === 1 ? "count" : "counts"}`;
  if (step.told) return `${timesWords(step, "the card")}, from ${from}.`;
  if (step.mixedUpWith.length === 0) return `the counts say little of it yet: ${from} saw it used.`;
  const names = [...new Set(step.mixedUpWith.map((key) => stepName([key], steps)))];
  const more = names.length - MOST_NAMED;
  const others = more > 0 ? [...names.slice(0, MOST_NAMED), `${more} more`] : names;
  return `can’t be told apart from ${listed(others)} yet: they go together from count to count.`;
}

function stepName(stepKeys: readonly string[], steps: ReadonlyMap<string, CardStepToday>): string {
  const words = stepKeys.flatMap((key) => steps.get(key)?.step.words ?? []);
  const card = cardName(stepKeys, steps);
  if (words.length === 0) return card.toLowerCase();
  return `${card}, ${listed(words.map((each) => `“${each}”`))}`;
}

function timesWords({ factor, low, high }: UseFactor, than: string): string {
  const [mean, from, to] = [factor, low, high].map((each) => Math.max(0, each).toFixed(2));
  return `${mean} times ${than}, truly ${from} to ${to}`;
}
