import type { Habits } from "#lib/packing/habits";
import type { Piece } from "#lib/packing/piece/piece";
import { chosenSupplies } from "#lib/packing/recipe/chosen-supplies";
import { type SmallestDraft, smallestDraft } from "#lib/packing/recipe/smallest-draft";
import type { CushionStyle } from "#lib/packing/recipe-version";
import type { Measures } from "#lib/units/measures";
import type { DraftChoice } from "./draft-choice";
import type { DraftShelf } from "./draft-shelf";

/**
 * The first card of a style, from the description of a piece and what is on the shelf.
 *
 * @param style cushion style
 * @param asked the piece, the shop's habits and measures, its shelf and what the seller chose
 * @returns the draft, or why there is none
 */
export function styleDraft(
  style: CushionStyle,
  asked: {
    readonly piece: Piece;
    readonly habits: Habits;
    readonly shelf: DraftShelf;
    readonly choice: DraftChoice;
    readonly measures: Measures;
  },
): SmallestDraft {
  const { piece, habits, shelf, choice, measures } = asked;
  const cartons =
    choice.cartonId === null
      ? shelf.cartons
      : shelf.cartons.filter(({ supplyId }) => supplyId === choice.cartonId);
  return smallestDraft(
    {
      piece,
      pieces: choice.pieces,
      habits: withCushion(habits, choice.cushion?.um ?? null),
      supplies: chosenSupplies(style, shelf.supplies),
      measures,
    },
    cartons,
    choice.isDouble ? shelf.cartons : null,
  );
}

/** Habits with another cushion for this one card. */
function withCushion(habits: Habits, um: number | null): Habits {
  return um === null ? habits : { ...habits, cushionUm: { sturdy: um, usual: um, thin: um } };
}
