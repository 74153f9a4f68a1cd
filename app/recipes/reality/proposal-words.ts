import type { RecipeProposal } from "#lib/packing/learning/recipe-proposals";
import { amountOfUnits } from "#lib/units/amount";
import { formatAmount, formatEstimate } from "#lib/units/amount-text";
import type { CardStepToday, SupplyEvidence } from "#prisma/records/card-evidence";
import { listed } from "./listed";

/** What a proposal is about. */
export type ProposalOf = {
  readonly supply: SupplyEvidence["supply"];
  readonly proposal: RecipeProposal;
  readonly steps: ReadonlyMap<string, CardStepToday>;
};

/**
 * A proposal in a line.
 *
 * @param of the proposal with its supply and the steps of the cards that hold
 * @returns words without a full stop
 * @example proposalTitle(mugFill) // "Mug pair on paper: about 13 sheets of Packing paper, the card says 11 sheets"
 */
export function proposalTitle({ supply, proposal, steps }: ProposalOf): string {
  const { says, usesAbout, stepKeys } = proposal;
  const about = amountOf(formatAmount(usesAbout, supply.useUnit), supply);
  const together = stepKeys.length > 1 ? " together" : "";
  return `${cardName(stepKeys, steps)}: about ${about}${together}, the card says ${formatAmount(says, supply.useUnit)}`;
}

/**
 * Which steps a proposal is about, and what it rests on.
 *
 * @param of the proposal with its supply and the steps of the cards that hold
 * @returns sentences
 * @example proposalReasons(mugFill)[1] // "From 8 counts; 9 times in 10 the real use is 12.2 sheets to 13.9 sheets."
 */
export function proposalReasons({ supply, proposal, steps }: ProposalOf): string[] {
  const { stepKeys, low, high, counts } = proposal;
  const words = stepKeys.map((key) => `“${steps.get(key)?.step.words ?? key}”`);
  const [first] = stepKeys;
  const per = steps.get(first ?? "")?.step.per === "parcel" ? "once a parcel" : "for each piece";
  const [from, to] = [low, high].map((units) => formatEstimate(amountOfUnits(units), supply.useUnit));
  return [
    stepKeys.length === 1
      ? `The step ${words.join("")}, taken ${per}.`
      : `The steps ${listed(words)}, each taken once: the counts tell what they take together, but not which of them it is.`,
    `From ${counts} counts; 9 times in 10 the real use is ${from} to ${to}.`,
  ];
}

/**
 * The card of steps.
 *
 * @param stepKeys steps of one card
 * @param steps of the cards that hold
 * @returns "Mug pair on paper"
 * @example cardName(["mug/fill"], steps) // "Mug pair on paper"
 */
export function cardName(stepKeys: readonly string[], steps: ReadonlyMap<string, CardStepToday>): string {
  const card = stepKeys.map((key) => steps.get(key)).find((each) => each !== undefined);
  return card === undefined ? "An earlier card" : `${card.itemType} on ${card.recipe.style}`;
}

/** What is counted by itself has no unit to stand before "of". */
function amountOf(words: string, { name, useUnit }: SupplyEvidence["supply"]): string {
  return useUnit === "each" ? `${words} ${name}` : `${words} of ${name}`;
}
