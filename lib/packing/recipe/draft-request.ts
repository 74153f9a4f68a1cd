import type { Block } from "#lib/packing/block";
import type { Habits } from "#lib/packing/habits";
import type { Piece } from "#lib/packing/piece/piece";
import type { ChosenSupplies } from "#lib/packing/recipe/chosen-supplies";
import type { Measures } from "#lib/units/measures";

/** A carton of the shop: inside sizes and board in micrometres, mass in milligrams, null if never weighed. */
export type DraftCarton = {
  readonly supplyId: string;
  readonly inside: Block;
  readonly boardUm: number;
  readonly massMg: number | null;
};

/** What a recipe is drafted from. `outer` is the carton around the carton, null for a single one. */
export type DraftRequest = {
  readonly piece: Piece;
  readonly pieces: number;
  readonly habits: Habits;
  readonly supplies: ChosenSupplies;
  readonly carton: DraftCarton;
  readonly outer: DraftCarton | null;
  readonly measures: Measures;
};
