import type { DraftSupply } from "#lib/packing/draft-supply";
import type { Material } from "#lib/packing/material";
import type { SupplyJob } from "#lib/packing/recipe/chosen-supplies";
import type { RecipeStep } from "#lib/packing/recipe-version";
import type { Amount } from "#lib/units/amount";
import { amountAsTyped, formatAmount } from "#lib/units/amount-text";

/**
 * A step of a drafted recipe. `theory` is what geometry asks for and `used` what is torn or taken, both in words;
 * `reason` tells in one line how the one came from the other. `guessed` until the shop has measured the supply.
 */
export type DraftedStep = RecipeStep & {
  readonly job: SupplyJob | "box";
  readonly theory: string;
  readonly used: string;
  readonly reason: string;
  readonly guessed: boolean;
};

/** A step before it has its place in the recipe. */
export type UnplacedStep = Omit<DraftedStep, "id" | "position">;

/** What a material is called in the words of a step. */
export const MATERIAL_WORDS: Readonly<Record<Material, string>> = {
  tissue: "tissue",
  "packing-paper": "paper",
  kraft: "kraft paper",
  "gift-wrap": "gift wrap",
  "small-bubble": "bubble",
  "large-bubble": "large bubble",
  foam: "foam",
  card: "card",
  "loose-fill": "loose fill",
  "household-tape": "household tape",
  "carton-tape": "tape",
  "paper-tape": "paper tape",
  "stretch-film": "stretch film",
  "rubber-band": "rubber bands",
};

/**
 * A step of a recipe, with its amount as a person would have typed it.
 *
 * @param step - job, words, supply, amount, per piece or per parcel; `theory` and how it was reckoned, in words
 * @returns the step, not yet placed
 * @example unplacedStep({ job: "fill", words: "Fill the sides with paper", supply: paper, amount: amountOfUnits(3),
 *   per: "parcel", theory: "2.7 sheets", reason: "140 cu in at 52 to a sheet" }).typedUnit // "sheets"
 */
export function unplacedStep(step: {
  readonly job: SupplyJob;
  readonly words: string;
  readonly supply: DraftSupply;
  readonly amount: Amount;
  readonly per: RecipeStep["per"];
  readonly theory: string;
  readonly reason: string;
}): UnplacedStep {
  const { job, words, supply, amount, per, theory, reason } = step;
  const typed = amountAsTyped(amount, supply.useUnit);
  const [typedValue = "", ...unit] = typed.split(" ");
  return {
    job,
    words,
    supplyId: supply.supplyId,
    amount,
    typedValue,
    typedUnit: unit.join(" "),
    per,
    theory,
    used: formatAmount(amount, supply.useUnit),
    reason,
    guessed: !supply.measured,
  };
}
