/** What is wrong with a card. An error must be mended before prices are asked for; a warning is worth a look. */
export type RateCardFault = {
  readonly severity: "error" | "warning";
  /** names the row and the zone, and the way out */
  readonly message: string;
};

/**
 * A fault that must be mended.
 *
 * @param message names the row and the zone, and the way out
 */
export function cardError(message: string): RateCardFault {
  return { severity: "error", message };
}
