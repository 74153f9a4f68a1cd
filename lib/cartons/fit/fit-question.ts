import type { Block } from "#lib/packing/block";

/** A piece with its wrap on. Upright: its height stays vertical, and it may turn in plan only. */
export type WrappedPiece = { readonly block: Block; readonly upright: boolean };

/** What must stay free for the cushion between the wrapped pieces and the carton, in whole micrometres from zero. */
export type Clearance = {
  /** at each of the four walls */
  readonly wallsUm: number;
  readonly baseUm: number;
  readonly topUm: number;
};

/** Whether these pieces fit this carton, edges parallel. */
export type FitQuestion = {
  /** one or more; sides whole micrometres above zero */
  readonly pieces: readonly WrappedPiece[];
  /** inside sizes of the carton, whole micrometres above zero */
  readonly inside: Block;
  readonly clearance: Clearance;
};
