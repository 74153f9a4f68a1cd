import type { CushionStyle } from "#lib/packing/recipe-version";
import type { Amount } from "#lib/units/amount";
import type { Day } from "#lib/units/day";
import { filledCard } from "./filled-card";
import type { PackingChoices } from "./packing-choices";

/** One line of the packing card. */
export type CardLine = {
  readonly key: string;
  readonly supplyId: string;
  readonly amount: Amount;
  /** Unit in which the line is shown and stepped, and the amount of one of it. */
  readonly shownUnit: string;
  readonly oneShown: Amount;
  readonly words: string | null;
  readonly recipeStepId: string | null;
};

export type DraftPiece = { readonly itemTypeId: string; readonly pieces: number };

/** Cartons from the outside in. A null supply is a saved odd carton with typed sizes. */
export type DraftCarton = { readonly supplyId: string | null; readonly sizes: string; readonly cut: string };

/** A parcel on the bench, not recorded yet. */
export type PackingDraft = {
  readonly id: string;
  readonly pieces: readonly DraftPiece[];
  readonly style: CushionStyle;
  readonly zoneId: string | null;
  readonly packedOn: Day;
  readonly cartons: readonly DraftCarton[];
  readonly lines: readonly CardLine[];
  readonly scale: string;
  /** The most that it may weigh by what was promised at listing, as typed: "2 lb". */
  readonly promised: string;
  readonly postage: string;
  readonly orders: string;
  /** Shares of 12,000 that were given by hand before, by reference; others split evenly. */
  readonly shares: Readonly<Record<string, number>>;
  readonly posted: boolean;
  /** The day posted where it is known already; else a posted parcel went on its day packed. */
  readonly postedOn: Day | null;
  readonly unusual: boolean;
  readonly note: string;
  /** No recipe is known for these item types. */
  readonly withoutRecipe: readonly string[];
  /** The recipe's carton list ends before this many pieces. */
  readonly overfull: boolean;
};

/**
 * An empty bench, or one with the likeliest parcel for an item type on it.
 * @param choices what the shop has
 * @param itemTypeId null leaves the bench empty
 * @param id key of the parcel to come
 * @param packedOn the day packed
 * @returns the draft with its card filled in
 */
export function draftFor(
  choices: PackingChoices,
  itemTypeId: string | null,
  id: string,
  packedOn: Day,
): PackingDraft {
  const likely = choices.likely.find((choice) => choice.itemTypeId === itemTypeId);
  const blank: PackingDraft = {
    id,
    pieces: itemTypeId === null ? [] : [{ itemTypeId, pieces: likely?.pieces ?? 1 }],
    style: likely?.style ?? choices.defaultStyle,
    zoneId: likely?.zoneId ?? null,
    packedOn,
    cartons: [],
    lines: [],
    scale: "",
    promised: "",
    postage: "",
    orders: "",
    shares: {},
    posted: false,
    postedOn: null,
    unusual: false,
    note: "",
    withoutRecipe: [],
    overfull: false,
  };
  const filled = filledCard(blank, choices);
  if (likely === undefined || likely.cartonId === null) return filled;
  return { ...filled, cartons: [{ supplyId: likely.cartonId, sizes: "", cut: "" }], overfull: false };
}
