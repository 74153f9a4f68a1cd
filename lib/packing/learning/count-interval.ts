import type { CountMethod } from "#lib/packing/learning/count-deviation";
import type { Amount } from "#lib/units/amount";
import type { Day } from "#lib/units/day";

/** How often a recipe step was taken, and what its card says for one time. A new version of a card is another recipe. */
export type StepUse = {
  readonly stepKey: string;
  /** item type, style and version: what a card is written for */
  readonly recipeKey: string;
  readonly times: number;
  readonly amount: Amount;
};

/** From one count of a supply to the next. */
export type CountInterval = {
  readonly from: Day;
  readonly to: Day;
  readonly opening: { readonly counted: Amount; readonly method: CountMethod };
  readonly closing: { readonly counted: Amount; readonly method: CountMethod };
  readonly received: Amount;
  /** booked as spoilt */
  readonly spoilt: Amount;
  /** what the parcels' own lines say, with what was changed on them by hand */
  readonly usedByBook: Amount;
  /** what the cards say for those parcels, by step */
  readonly uses: readonly StepUse[];
};
