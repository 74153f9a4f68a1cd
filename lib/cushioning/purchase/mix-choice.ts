import type { CushionStyle } from "#lib/packing/recipe-version";

/** Parcels of one item type that are packed in one style. */
export type SplitPart = { readonly typeId: string; readonly style: CushionStyle; readonly parcels: number };

/** What a plan decides; all else follows from it. Parcels of a type that no part packs stay unpacked. */
export type MixChoice = {
  readonly lines: readonly { readonly offerId: string; readonly packs: number }[];
  readonly split: readonly SplitPart[];
};
