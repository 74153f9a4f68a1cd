import { billOfMaterials } from "#lib/packing/bill";
import type { SupplyTerms } from "#lib/packing/card-sum";
import { type MaterialCost, materialCost } from "#lib/packing/material-cost";
import { packedMass } from "#lib/packing/packed-mass";
import type { RecipeVersion } from "#lib/packing/recipe-version";
import { type Amount, amountOfUnits, sumAmounts } from "#lib/units/amount";

/** What one parcel by a card takes of one supply, and what that weighs and costs. */
export type SupplyBill = {
  readonly supplyId: string;
  readonly amount: Amount;
  readonly mass: ReturnType<typeof packedMass>;
  readonly book: MaterialCost;
  readonly replacement: MaterialCost;
};

/**
 * What a parcel takes by a recipe, a line for each supply, its carton included: the parts of `cardSum`. A mass or a
 * cost is rounded a line, so that many lines may differ from the sum in the last digit.
 *
 * @param recipe - version of a recipe
 * @param pieces - whole pieces in the parcel, from 1
 * @param terms - masses and prices of supplies
 * @returns lines in the order in which the steps take them, cartons at the end
 * @throws RangeError if the pieces are not a whole number from 1, or a mass or price is no number from zero
 * @example billBySupply(mugOnPaper, 1, terms).map(({ supplyId }) => supplyId) // ["paper", "tape", "cube-8"]
 */
export function billBySupply(
  recipe: RecipeVersion,
  pieces: number,
  terms: SupplyTerms,
): readonly SupplyBill[] {
  const { lines, cartons } = billOfMaterials({ parts: [{ itemTypeId: recipe.itemTypeId, pieces, recipe }] });
  const taken = [...lines, ...cartons.map((supplyId) => ({ supplyId, amount: amountOfUnits(1) }))];
  return [...new Set(taken.map(({ supplyId }) => supplyId))].map((supplyId) => {
    const own = taken.filter((line) => line.supplyId === supplyId);
    return {
      supplyId,
      amount: sumAmounts(own.map(({ amount }) => amount)),
      mass: packedMass({ pieces: [], lines: own, cartons: [], supplyMasses: terms.masses }),
      book: materialCost({ lines: own, cartons: [], unitCosts: terms.book }),
      replacement: materialCost({ lines: own, cartons: [], unitCosts: terms.replacement }),
    };
  });
}
