import type { RecipeProposal } from "#lib/packing/learning/recipe-proposals";
import { formatAmount } from "#lib/units/amount-text";
import type { UseUnit } from "#lib/units/use-unit";
import type { CardStepToday } from "#prisma/records/card-evidence";

const LONGEST_NOTE = 2000;

/**
 * The note of a card that was changed from the counts, before what its note said already.
 *
 * @param card the step that is changed, with its card
 * @param proposal what the counts proposed
 * @param unit the supply's use unit
 * @returns text of at most 2,000 letters
 * @example changeNote(fill, proposal, "sheet") // "“Fill” takes 13 sheets instead of 11 sheets, as 8 counts say."
 */
export function changeNote(
  { step, recipe }: Pick<CardStepToday, "step" | "recipe">,
  proposal: Pick<RecipeProposal, "says" | "usesAbout" | "counts">,
  unit: UseUnit,
): string {
  const [now, was] = [proposal.usesAbout, proposal.says].map((each) => formatAmount(each, unit));
  const said = `“${step.words}” takes ${now} instead of ${was}, as ${proposal.counts} counts say.`;
  return (recipe.note === null ? said : `${said} ${recipe.note}`).slice(0, LONGEST_NOTE);
}
