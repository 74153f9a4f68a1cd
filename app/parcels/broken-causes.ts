import type { Choice } from "../_parts/sentence-choice";

/** What went wrong with a parcel, as a seller can tell from the pieces and the carton. */
export const BROKEN_CAUSES: readonly Choice[] = [
  { value: "unknown", words: "not known" },
  { value: "crushed", words: "the carton was crushed" },
  { value: "shifted", words: "it shifted and reached a wall" },
  { value: "against-another", words: "piece against piece" },
  { value: "stuck-out", words: "what sticks out: handle, spout, knob" },
  { value: "inside", words: "from inside: a hollow was not filled" },
];

/**
 * What went wrong, in words.
 *
 * @param cause as kept; null where it was never said
 * @returns words, or null
 */
export function brokenCauseWords(cause: string | null): string | null {
  return BROKEN_CAUSES.find(({ value }) => value === cause && value !== "unknown")?.words ?? null;
}
