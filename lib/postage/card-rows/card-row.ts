import type { RateCard } from "#lib/postage/rate-card";
import type { Day } from "#lib/units/day";
import type { Measures } from "#lib/units/measures";

/** A row of a file of cards; `line` as the file counts, from 1. */
export type CardRow = { readonly line: number; readonly cells: readonly string[] };

/** What is wrong with a row, and the way out. */
export type RowProblem = { readonly line: number; readonly words: string };

/** A card with who says so. */
export type SourcedCard = {
  readonly card: RateCard;
  /** where its prices come from, in the seller's words; null: not written down */
  readonly source: string | null;
  /** day on which they were copied from there */
  readonly readOn: Day | null;
};

/** How the numbers of rows are meant. */
export type RowTerms = {
  readonly measures: Measures;
  /** ISO 4217 code; a card in another one is refused */
  readonly currency: string;
  /** names of the shop's zones; null: any name will do */
  readonly zones: readonly string[] | null;
};

/** What reading the parts of a card leans on. */
export type RowReader = {
  readonly measures: Measures;
  readonly minorDigits: number;
  /** the zones over the columns */
  readonly zones: readonly string[];
  /** notes what is wrong with a row; stands for what could not be read */
  readonly refuse: (line: number, words: string) => null;
};

/** The columns before the zones. */
export const CARD_COLUMNS = ["row", "what", "value"] as const;

/** A mark for "the carrier gives no price": a dash of any length. */
export const NO_PRICE_MARK = "–";
