/** One wrapping step of a starter recipe: it is done to every piece, in the order of the list. */
export type StarterWrap = {
  readonly words: string;
  readonly supply: string;
  /** Amount in the supply's use unit, as a packer would say it: "1/2". */
  readonly value: string;
};

/** An item type that a new shop may copy, with how it is usually packed. */
export type StarterItem = {
  readonly id: string;
  readonly name: string;
  /** Mass of the bare piece, grams: a guess that the seller overwrites. */
  readonly grams: number;
  /** Fill the hollows, guard what sticks out, tissue, cushion, outer wrap: per piece. */
  readonly wraps: readonly StarterWrap[];
  /** Space left in the carton round the wrapped piece, cubic inches. */
  readonly voidCubicInches: number;
  /** Where the piece stands in its carton while the sides and the top are filled. */
  readonly stand: string;
  /** Carton tape of an H over both ends, inches. */
  readonly tapeInches: number;
  /** Inside sizes of the carton for up to so many pieces. */
  readonly cartons: readonly { readonly upTo: number; readonly sizes: string }[];
  readonly note: string;
};
