import { countsStillNeeded } from "#lib/packing/learning/recipe-proposals";
import { formatAmount } from "#lib/units/amount-text";
import { type Day, daysBetween } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import type { CardEvidence } from "#prisma/records/card-evidence";
import type { RecipeAnswer } from "#prisma/records/recipe-answers";
import { cardName } from "./proposal-words";

const SAID = { no: "No, the card is right", later: "Later" } as const;
/** So long a "yes" stands among the answers. */
const DAYS_OF_YES = 28;

/** The card of a step of any version, and the day of a version of it that is written for later. */
export type CardOfStep = (stepId: string) => { readonly name: string; readonly laterFrom: Day | null };

/** An answer as the screen says it. */
export type AnswerLine = { readonly id: string; readonly title: string; readonly words: string };

/**
 * What was answered and is not asked for the time being, and what was changed lately.
 *
 * @param evidence of the counts
 * @param today the day
 * @param cardOf the card of a step, also of one that holds no longer
 * @returns lines, the latest answer first
 * @example answerLines(evidence, today, cardOf)[0]?.words // "Asked again after 4 more counts of Packing paper, …"
 */
export function answerLines(evidence: CardEvidence, today: Day, cardOf: CardOfStep): AnswerLine[] {
  return evidence.answers.toReversed().flatMap((answer) => answerLine(answer, evidence, today, cardOf) ?? []);
}

function answerLine(
  answer: RecipeAnswer,
  { supplies, steps }: CardEvidence,
  today: Day,
  cardOf: CardOfStep,
): AnswerLine | null {
  const of = supplies.find(({ supply }) => supply.id === answer.supplyId);
  if (of === undefined) return null;
  const { id, name, useUnit } = of.supply;
  const on = formatDay(answer.answeredOn);
  const [says, about] = [answer.says, answer.about].map((each) => formatAmount(each, useUnit));
  if (answer.answer === "yes") {
    if (daysBetween(answer.answeredOn, today) > DAYS_OF_YES) return null;
    const card = cardOf(answer.stepIds[0] ?? id);
    const later =
      card.laterFrom === null
        ? ""
        : ` The version from ${formatDay(card.laterFrom, { year: true })} is written already and has amounts of its own.`;
    const words = `Parcels packed before keep their amounts. The next counts tell whether it fits.${later}`;
    return {
      id: answer.id,
      title: `${card.name} says ${about} of ${name} instead of ${says} since ${on}`,
      words,
    };
  }
  const left = countsStillNeeded({ answer: answer.answer, on: answer.answeredOn }, of.countDays);
  if (left === 0 || !answer.stepIds.some((key) => steps.has(key))) return null;
  return {
    id: answer.id,
    title: `${cardName(answer.stepIds, steps)}: “${SAID[answer.answer]}” on ${on} to about ${about} of ${name} instead of ${says}`,
    words: `Asked again after ${left} more ${left === 1 ? "count" : "counts"} of ${name} at the earliest, if the counts then still say so${answer.answer === "no" ? " in spite of your no" : ""}.`,
  };
}
