import type { Block } from "#lib/packing/block";

/** Where a piece stands in the carton. */
export type PlacedPiece = {
  /** its sides as turned, along the carton's length, width and height */
  readonly turned: Block;
  /** micrometres from the carton's inner corner to the piece's nearest corner, clearance included */
  readonly alongUm: number;
  readonly acrossUm: number;
  readonly upUm: number;
};

/** One place for each piece, in the order of the question. */
export type Placement = readonly PlacedPiece[];
