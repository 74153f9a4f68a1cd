import type { RecipeVersion } from "#lib/packing/recipe-version";
import { unitsOf } from "#lib/units/amount";

/** What a recipe takes of each supply, in use units. */
export type RecipeTakes = {
  readonly perPiece: ReadonlyMap<string, number>;
  readonly perParcel: ReadonlyMap<string, number>;
};

/**
 * What a recipe takes of each supply for a piece and once a parcel, without its cartons.
 *
 * @param recipe a version of a recipe
 * @returns use units by supply
 * @example recipeTakes(mugOnPaper).perPiece.get("packing-paper") // 11
 */
export function recipeTakes(recipe: Pick<RecipeVersion, "steps">): RecipeTakes {
  const perPiece = new Map<string, number>();
  const perParcel = new Map<string, number>();
  for (const step of recipe.steps) {
    const takes = step.per === "piece" ? perPiece : perParcel;
    takes.set(step.supplyId, (takes.get(step.supplyId) ?? 0) + unitsOf(step.amount));
  }
  return { perPiece, perParcel };
}

/** How an item type is packed lately. */
export type UsualPacking = {
  /** recipes in use and their shares of the pieces, which add up to 1 */
  readonly recipes: readonly { readonly takes: RecipeTakes; readonly share: number }[];
  /** outer cartons and their shares of the parcels */
  readonly cartons: readonly { readonly supplyId: string; readonly share: number }[];
  /** parcels that the item type leads for each of its pieces, from 0 */
  readonly parcelsPerPiece: number;
};

/**
 * What one piece of an item type takes of each supply, as it is packed lately: its own steps, and its part of what is
 * taken once a parcel.
 *
 * @param packing recipes and cartons with their shares
 * @returns use units by supply
 * @example usualBill({ recipes: [{ takes, share: 1 }], cartons: [], parcelsPerPiece: 0.5 })
 */
export function usualBill({ recipes, cartons, parcelsPerPiece }: UsualPacking): Map<string, number> {
  const bill = new Map<string, number>();
  const add = (supplyId: string, units: number): void => {
    if (units > 0) bill.set(supplyId, (bill.get(supplyId) ?? 0) + units);
  };
  for (const { takes, share } of recipes) {
    for (const [supplyId, units] of takes.perPiece) add(supplyId, share * units);
    for (const [supplyId, units] of takes.perParcel) add(supplyId, share * units * parcelsPerPiece);
  }
  for (const { supplyId, share } of cartons) add(supplyId, share * parcelsPerPiece);
  return bill;
}
