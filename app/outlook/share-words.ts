import { percentText } from "./percent-text";

const PERCENT = 100;
/** So near to a plain fraction that its name tells as much. */
const NEAR = 0.025;
const PLAIN: readonly (readonly [share: number, words: string])[] = [
  [1 / 10, "a tenth"],
  [1 / 5, "a fifth"],
  [1 / 4, "a quarter"],
  [1 / 3, "a third"],
  [1 / 2, "half"],
  [2 / 3, "two thirds"],
  [3 / 4, "three quarters"],
  [4 / 5, "four fifths"],
  [9 / 10, "nine tenths"],
];

/**
 * A share in words.
 *
 * @param share 0 to 1
 * @returns a plain fraction where one is near, else percent; "all" from 97.5 % on
 * @example shareWords(0.33) // "a third"
 */
export function shareWords(share: number): string {
  if (share > 1 - NEAR) return "all";
  const plain = PLAIN.find(([value]) => Math.abs(value - share) <= NEAR);
  return plain?.[1] ?? percentText(share * PERCENT);
}
