import { plainAmount } from "#lib/packing/learning/plain-amount";
import type { RecipeEvidence, StepEvidence } from "#lib/packing/learning/recipe-evidence";
import { naturalStep } from "#lib/packing/natural-amount";
import { mixtureUpTo } from "#lib/statistics/mixture";
import { type Amount, sumAmounts, unitsOf } from "#lib/units/amount";
import type { Day } from "#lib/units/day";
import type { UseUnit } from "#lib/units/use-unit";

/** A step of a recipe that holds today, with what its card says for one time. */
export type CardStep = { readonly stepKey: string; readonly says: Amount };

/** What the seller answered to an earlier proposal. A "yes" makes a new card, which is another step. */
export type ProposalAnswer = {
  readonly stepKeys: readonly string[];
  readonly answer: "no" | "later";
  readonly on: Day;
};

/** "Mug pair: you use about 13 sheets, the card says 11. Change from today?" */
export type RecipeProposal = {
  /** one step; or several of one recipe, where the counts tell what they take together but not which of them it is */
  readonly stepKeys: readonly string[];
  readonly says: Amount;
  /** rounded to natural parts */
  readonly usesAbout: Amount;
  /** use units; they hold the real use 9 times in 10 */
  readonly low: number;
  readonly high: number;
  readonly counts: number;
  /** that the real use is off by more than half of what would be worth a change */
  readonly odds: number;
};

/** What the proposals of one supply are made from, besides the evidence. */
type ProposalGround = {
  readonly unit: UseUnit;
  readonly cards: readonly CardStep[];
  readonly answers: readonly ProposalAnswer[];
  /** days of the counts of this supply */
  readonly countDays: readonly Day[];
};

/** A change is worth making from a tenth of the card on, and from what a packer takes at once. Guesses. */
const WORTH_SHARE = 0.1;
/** On cards below so many units half of that is enough, unless the supply is taken whole. */
const SMALL_CARD = 2;
/** How sure a proposal is; chosen so that shops with true cards see hardly any, see the bench. */
const SURE = 0.98;
const LEAST_COUNTS = 4;
/** Further counts until a step is proposed again. */
const COUNTS_AFTER: Readonly<Record<ProposalAnswer["answer"], number>> = { no: 4, later: 1 };

/**
 * Changes of cards that the counts speak for. Never made by themselves: the seller answers. After a "no" a step comes
 * back when four more counts were made and the counts outweigh the "no"; after "later" with the next count.
 *
 * @param evidence of `recipeEvidence`, which was told of the noes
 * @param ground use unit, steps that hold today, answers so far, days of the supply's counts
 * @returns proposals, the surest first
 * @example recipeProposals(evidence, { unit: "sheet", cards: [{ stepKey: "mug/fill", says: amountOfUnits(11) }],
 *   answers: [], countDays }) // [{ usesAbout: 13 sheets, ... }]
 */
export function recipeProposals(evidence: RecipeEvidence, ground: ProposalGround): RecipeProposal[] {
  const says = new Map(ground.cards.map((card) => [card.stepKey, card.says]));
  const proposed = (entries: readonly StepEvidence[]): RecipeProposal[] =>
    entries
      .filter((step) => step.told && step.counts >= LEAST_COUNTS && !isAnswered(step.stepKeys, ground))
      .flatMap((step) => proposalOf(step, says, ground.unit) ?? []);
  const single = proposed(evidence.steps);
  const named = new Set(single.flatMap(({ stepKeys }) => stepKeys));
  const whole = proposed(evidence.recipes).filter(({ stepKeys }) => !stepKeys.some((key) => named.has(key)));
  return [...single, ...whole].sort((a, b) => b.odds - a.odds);
}

/**
 * The least change of a card that is worth a word: a tenth of it, and what a packer takes at once; half of that on cards
 * below two units, unless the supply is taken whole.
 *
 * @param units what the card says, use units
 * @param unit use unit
 * @returns use units
 * @see common practice, no source
 * @example worthwhileChange(11, "sheet") // 1.1
 */
export function worthwhileChange(units: number, unit: UseUnit): number {
  const step = unitsOf(naturalStep(unit));
  return Math.max(WORTH_SHARE * units, units < SMALL_CARD && step < 1 ? step / 2 : step);
}

/**
 * How often a step was answered with "no", for `recipeEvidence`.
 *
 * @param answers so far
 * @returns counts by step key
 * @example saidNo([{ stepKeys: ["mug/fill"], answer: "no", on }]).get("mug/fill") // 1
 */
export function saidNo(answers: readonly ProposalAnswer[]): ReadonlyMap<string, number> {
  const noes = new Map<string, number>();
  for (const { stepKeys, answer } of answers) {
    if (answer !== "no") continue;
    for (const key of stepKeys) noes.set(key, (noes.get(key) ?? 0) + 1);
  }
  return noes;
}

/**
 * How many more counts an answered proposal needs before it can come back.
 *
 * @param answer what was said, and on which day
 * @param countDays days of the supply's counts
 * @returns counts, 0 when it may come back
 * @example countsStillNeeded({ answer: "no", on }, countDays) // 4 on the day of the answer
 */
export function countsStillNeeded(
  { answer, on }: Pick<ProposalAnswer, "answer" | "on">,
  countDays: readonly Day[],
): number {
  return Math.max(0, COUNTS_AFTER[answer] - countDays.filter((counted) => counted > on).length);
}

function isAnswered(stepKeys: readonly string[], { answers, countDays }: ProposalGround): boolean {
  const about = answers.filter((answer) => answer.stepKeys.some((key) => stepKeys.includes(key)));
  return about.some((answer) => countsStillNeeded(answer, countDays) > 0);
}

/** The proposal that a piece of evidence speaks for, if any. */
function proposalOf(
  step: StepEvidence,
  cards: ReadonlyMap<string, Amount>,
  unit: UseUnit,
): RecipeProposal | null {
  const amounts = step.stepKeys.map((key) => cards.get(key));
  const holding = amounts.filter((each) => each !== undefined);
  // A bundle with a card that no longer holds says nothing about the one that does.
  if (holding.length < amounts.length) return null;
  const says = sumAmounts(holding);
  const units = unitsOf(says);
  const worth = worthwhileChange(units, unit);
  const isMore = step.factor > 1;
  const bound = 1 + ((isMore ? 1 : -1) * worth) / units / 2;
  const below = mixtureUpTo(step.parts, bound);
  const odds = isMore ? 1 - below : below;
  if (odds < SURE || Math.abs(step.factor - 1) * units < worth) return null;
  const usesAbout = plainAmount(Math.max(0, step.factor) * units, (step.deviation * units) / 2, unit);
  if (usesAbout === says) return null;
  return {
    stepKeys: step.stepKeys,
    says,
    usesAbout,
    low: Math.max(0, step.low) * units,
    high: step.high * units,
    counts: step.counts,
    odds,
  };
}
