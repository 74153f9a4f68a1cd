/**
 * What is wrong with a card. An error must be mended before prices are asked for; a warning may be a slip of the finger and is
 * worth a look; a note is only good to know.
 */
export type RateCardFault = {
  readonly severity: "error" | "warning" | "note";
  /** names the row and the zone, and the way out */
  readonly message: string;
  /** the part of the card that it is about, as `partOf` names it; left out: its head */
  readonly part?: string;
};

/** A part of a card: the first fee is `partOf("fee", 0)`, the second step of the first band `partOf("step", 0, 1)`. */
export function partOf(kind: "band" | "step" | "further" | "size" | "fee", ...at: readonly number[]): string {
  return [kind, ...at].join(" ");
}

/**
 * The same faults, each with the part that it is about.
 *
 * @param part as `partOf` names it
 * @param faults that were found there
 */
export function faultsOf(part: string, faults: readonly RateCardFault[]): RateCardFault[] {
  return faults.map((fault) => ({ ...fault, part: fault.part ?? part }));
}

/**
 * A fault that must be mended.
 *
 * @param message names the row and the zone, and the way out
 */
export function cardError(message: string): RateCardFault {
  return { severity: "error", message };
}
