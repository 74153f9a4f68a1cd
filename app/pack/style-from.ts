import { CUSHION_STYLES, type CushionStyle } from "#lib/packing/recipe-version";

/**
 * A cushion style as it is stored.
 *
 * @param text stored
 * @returns mixed for one that is not known
 */
export function styleFrom(text: string): CushionStyle {
  return CUSHION_STYLES.find((style) => style === text) ?? "mixed";
}
