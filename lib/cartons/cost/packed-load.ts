import type { WrappedPiece } from "#lib/cartons/fit/fit-question";

/** What goes into one carton, wrapped: the blocks that must fit, and what they take and weigh together. */
export type PackedLoad = {
  readonly pieces: readonly WrappedPiece[];
  /** room that the pieces take in millilitres, at most their blocks: what is void beside them is filled */
  readonly ml: number;
  /** pieces, wraps and papers in milligrams; without carton, fill and tape */
  readonly massMg: number;
};

/** A carton that could be taken: inside, board, and what one costs in 1/10,000 minor unit. */
export type OfferedCarton = {
  readonly id: string;
  readonly inside: { readonly lengthUm: number; readonly widthUm: number; readonly heightUm: number };
  readonly boardUm: number;
  readonly massMg: number;
  readonly value: number;
};
