/** How a carton comes to the bench: bought flat, or sent before. */
export type BoardCondition = "new" | "reused";

/** How much of the rated weight the shop trusts, in whole percent. */
export type TrustedBoard = { readonly newPercent: number; readonly reusedPercent: number };

/**
 * Settings to begin with. Reused board is a guess, no source: folds, damp and earlier loads cost strength, and no figure
 * for a sound used carton was found. Some sellers of cartons name everyday limits far below the certificate's, so new
 * board may be trusted with less as well.
 */
export const USUAL_TRUST: TrustedBoard = { newPercent: 100, reusedPercent: 70 };

/**
 * What of the rated weight is trusted.
 *
 * @param condition of the board
 * @param settings of the shop
 * @returns whole percent, and whether it is a guess
 * @example trustOf("reused") // { percent: 70, isGuess: true }
 */
export function trustOf(
  condition: BoardCondition,
  settings: TrustedBoard = USUAL_TRUST,
): { readonly percent: number; readonly isGuess: boolean } {
  const percent = condition === "new" ? settings.newPercent : settings.reusedPercent;
  return { percent, isGuess: percent < 100 };
}
