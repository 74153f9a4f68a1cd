import type { CushionStyle } from "#lib/packing/recipe-version";

const NUMBER_WORDS = [
  "no",
  "one",
  "two",
  "three",
  "four",
  "five",
  "six",
  "seven",
  "eight",
  "nine",
  "ten",
  "eleven",
  "twelve",
];

/**
 * A count as it stands in a sentence: a word up to twelve, figures from there on.
 * @param count whole number from 0
 * @returns "one", "two", "13"
 */
export function countWord(count: number): string {
  return NUMBER_WORDS[count] ?? String(count);
}

/**
 * What a parcel holds, in words.
 * @param pieces item types with their pieces
 * @param names name of each item type by id
 * @returns "1 × Mug pair and 2 × Bud vase"; names stand as the shop wrote them
 */
export function piecesWords(
  pieces: readonly { readonly itemTypeId: string; readonly pieces: number }[],
  names: ReadonlyMap<string, string>,
): string {
  return pieces
    .map((piece) => `${piece.pieces} × ${names.get(piece.itemTypeId) ?? piece.itemTypeId}`)
    .join(" and ");
}

/** The words of each cushion style. */
export const STYLE_WORDS: Readonly<Record<CushionStyle, string>> = {
  paper: "paper",
  bubble: "bubble",
  mixed: "paper and bubble",
};
