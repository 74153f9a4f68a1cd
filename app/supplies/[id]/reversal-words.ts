type Outcome =
  | { readonly kind: "reversed" | "already-reversed" | "not-found" }
  | { readonly kind: "not-reversible"; readonly cause: string };

/**
 * What became of taking a line back, in words.
 *
 * @param outcome as the records say
 * @returns the words, and whether it was done
 */
export function reversalWords(outcome: Outcome): { readonly isDone: boolean; readonly words: string } {
  switch (outcome.kind) {
    case "reversed":
      return { isDone: true, words: "Taken back. Both lines stay in the ledger." };
    case "already-reversed":
      return { isDone: true, words: "This line was taken back before." };
    case "not-found":
      return { isDone: false, words: "This line is not in the ledger. Load the page again." };
    case "not-reversible":
      return {
        isDone: false,
        words:
          outcome.cause === "packed"
            ? "Use by a parcel is put right in the parcel, under Parcels."
            : "A count is put right by counting again.",
      };
    default:
      return outcome satisfies never;
  }
}
