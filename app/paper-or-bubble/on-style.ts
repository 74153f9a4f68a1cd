import type { CushionStyle } from "#lib/packing/recipe-version";

const WORDS: Readonly<Record<CushionStyle, string>> = {
  paper: "on paper",
  bubble: "on bubble",
  mixed: "mixed",
};

/**
 * In which way something is packed, within a sentence.
 *
 * @param style cushion style
 * @returns "on paper", "mixed"
 */
export function onStyle(style: CushionStyle): string {
  return WORDS[style];
}
