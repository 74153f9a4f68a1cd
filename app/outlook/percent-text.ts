const NO_BREAK = "\u00a0";

/**
 * A whole number of percent that no line break tears from its sign.
 *
 * @param percent rounded to a whole number
 * @example percentText(12.3) // "12\u00a0%"
 */
export function percentText(percent: number): string {
  return `${Math.round(percent)}${NO_BREAK}%`;
}
