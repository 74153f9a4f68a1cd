import { billOfMaterials } from "#lib/packing/bill";
import { type MaterialCost, materialCost } from "#lib/packing/material-cost";
import { packedMass } from "#lib/packing/packed-mass";
import type { RecipeVersion } from "#lib/packing/recipe-version";

/** What a shop knows of its supplies: milligrams and 1/10,000 minor unit a use unit, by supply id. */
export type SupplyTerms = {
  readonly masses: ReadonlyMap<string, number | null>;
  /** moving average cost in the books */
  readonly book: ReadonlyMap<string, number | null>;
  /** what buying it again costs */
  readonly replacement: ReadonlyMap<string, number | null>;
};

/** What one parcel by a card weighs and costs, its carton included. */
export type CardSum = {
  readonly mass: ReturnType<typeof packedMass>;
  readonly book: MaterialCost;
  readonly replacement: MaterialCost;
  /** from the outside in; none where the card names no carton: then neither weight nor cost has one */
  readonly cartons: readonly string[];
};

/**
 * What a parcel weighs and costs by a recipe: bill of materials, masses, book cost and replacement prices.
 *
 * @param recipe - version of a recipe
 * @param pieces - whole pieces in the parcel, from 1
 * @param pieceMassMg - milligrams of a bare piece, null if never weighed
 * @param terms - masses and prices of supplies
 * @returns the sums, each with what it leaves out
 * @throws RangeError if the pieces are not a whole number from 1, or a mass or price is no number from zero
 * @example cardSum(mugOnPaper, 1, 370000, terms).mass.mg // 797000
 */
export function cardSum(
  recipe: RecipeVersion,
  pieces: number,
  pieceMassMg: number | null,
  terms: SupplyTerms,
): CardSum {
  const { lines, cartons } = billOfMaterials({ parts: [{ itemTypeId: recipe.itemTypeId, pieces, recipe }] });
  const piece = { itemTypeId: recipe.itemTypeId, pieces, massMg: pieceMassMg };
  return {
    mass: packedMass({ pieces: [piece], lines, cartons, supplyMasses: terms.masses }),
    book: materialCost({ lines, cartons, unitCosts: terms.book }),
    replacement: materialCost({ lines, cartons, unitCosts: terms.replacement }),
    cartons,
  };
}
