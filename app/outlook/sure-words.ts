import { percentText } from "./percent-text";
import { shareWords } from "./share-words";

const PERCENT = 100;
/** Half the band over what is expected, up to which each word holds. Words of this program; no source. */
const WORDS: readonly (readonly [upTo: number, words: string])[] = [
  [0.15, "quite sure"],
  [0.3, "fairly sure"],
  [0.6, "unsure"],
  [Number.POSITIVE_INFINITY, "very unsure"],
];

/** What a forecast's sureness is read from. */
export type Sureness = {
  readonly mean: number;
  /** ends of the band that holds 8 times in 10 */
  readonly low: number;
  readonly high: number;
  /** share of the number that is a guess, 0 to 1 */
  readonly guessedShare: number;
};

/**
 * How sure a sum is, in words, by how wide its band is; and what of it is still a guess.
 *
 * @param sum expected, with its band
 * @returns words for a row
 * @example sureWords({ mean: 100, low: 80, high: 125, guessedShare: 0 }) // "fairly sure, give or take 23 %"
 */
export function sureWords({ mean, low, high, guessedShare }: Sureness): string {
  if (mean <= 0) return "nothing expected";
  const share = (high - low) / 2 / mean;
  const word = WORDS.find(([upTo]) => share <= upTo)?.[1] ?? "very unsure";
  const width = `${word}, give or take ${percentText(share * PERCENT)}`;
  return guessedShare <= 0 ? width : `${width}; ${shareWords(guessedShare)} of it is a guess`;
}
