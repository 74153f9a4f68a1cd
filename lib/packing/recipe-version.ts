import type { Amount } from "#lib/units/amount";
import type { Day } from "#lib/units/day";

/** The cushion style of a parcel: what mainly wraps and fills it. */
export type CushionStyle = "paper" | "bubble" | "mixed";

export const CUSHION_STYLES: readonly CushionStyle[] = ["paper", "bubble", "mixed"];

/** One step of a recipe; `per` says whether it is taken for each piece or once a parcel. */
export type RecipeStep = {
  readonly id: string;
  readonly position: number;
  readonly words: string;
  readonly supplyId: string;
  readonly amount: Amount;
  readonly typedValue: string;
  readonly typedUnit: string;
  readonly per: "piece" | "parcel";
};

/** Which carton takes up to so many pieces. */
export type RecipeCarton = { readonly upTo: number; readonly supplyId: string };

/** What an item type takes in a cushion style, from a day on. Never changed once a parcel has used it. */
export type RecipeVersion = {
  readonly id: string;
  readonly itemTypeId: string;
  readonly style: CushionStyle;
  readonly effectiveFrom: Day;
  readonly steps: readonly RecipeStep[];
  readonly cartons: readonly RecipeCarton[];
};

/**
 * The recipe that held on the day of packing: the latest version from that day or before. A parcel from before the
 * first version takes the first one.
 *
 * @param versions - versions of any item types and styles, in any order
 * @param itemTypeId - item type
 * @param style - cushion style
 * @param packedOn - the day of packing
 * @returns the version, or null if the item type has no recipe in this style
 * @example recipeOn([spring, autumn], "mug", "paper", day("2026-11-25"))?.id // "autumn"
 */
export function recipeOn<Version extends RecipeVersion>(
  versions: readonly Version[],
  itemTypeId: string,
  style: CushionStyle,
  packedOn: Day,
): Version | null {
  const fitting = versions
    .filter((version) => version.itemTypeId === itemTypeId && version.style === style)
    .sort((a, b) => compareText(a.effectiveFrom, b.effectiveFrom));
  return fitting.findLast((version) => version.effectiveFrom <= packedOn) ?? fitting[0] ?? null;
}

function compareText(first: string, second: string): number {
  if (first === second) return 0;
  return first < second ? -1 : 1;
}
