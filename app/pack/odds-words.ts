/**
 * Odds as a packer says them: never more than the numbers bear.
 *
 * @param odds 0 to 1
 * @returns "97 in 100"; at the ends "more than 99 in 100" and "hardly any"
 * @example oddsWords(0.973) // "97 in 100"
 */
export function oddsWords(odds: number): string {
  if (odds > 0.995) return "more than 99 in 100";
  if (odds < 0.005) return "hardly any";
  return `${Math.round(odds * 100)} in 100`;
}
