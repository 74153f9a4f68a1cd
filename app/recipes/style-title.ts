import type { CushionStyle } from "#lib/packing/recipe-version";

/**
 * A cushion style as a title, and as the beginning of a sentence.
 *
 * @param style cushion style
 * @returns "On paper", "On bubble", "Mixed"
 */
export function styleTitle(style: CushionStyle): string {
  return style === "mixed" ? "Mixed" : `On ${style}`;
}
