import { billOfMaterials } from "#lib/packing/bill";
import { CUSHION_STYLES, type RecipeVersion, recipeOn } from "#lib/packing/recipe-version";
import { shownUnit } from "./card-line";
import type { PackingChoices } from "./packing-choices";
import type { CardLine, DraftCarton, PackingDraft } from "./packing-draft";

type Part = { readonly itemTypeId: string; readonly pieces: number; readonly recipe: RecipeVersion };

/**
 * Fills the card of a draft anew: the steps of the recipe versions of the day packed, and the carton that the
 * recipe names for so many pieces. Item types without a recipe are named, and the card is left open for them.
 * @param draft the parcel on the bench
 * @param choices what the shop has
 * @returns the draft with lines and carton filled in
 */
export function filledCard(draft: PackingDraft, choices: PackingChoices): PackingDraft {
  const parts = draft.pieces.flatMap((piece): Part[] => {
    const recipe = recipeFor(choices.recipes, piece.itemTypeId, draft);
    return recipe === null ? [] : [{ ...piece, recipe }];
  });
  const withoutRecipe = draft.pieces
    .filter((piece) => !parts.some((part) => part.itemTypeId === piece.itemTypeId))
    .map((piece) => piece.itemTypeId);
  if (parts.length === 0) return { ...draft, lines: [], withoutRecipe, overfull: false };
  const bill = billOfMaterials({ parts });
  const lines = bill.lines.flatMap((line, index): CardLine[] => {
    const supply = choices.supplies.find((candidate) => candidate.id === line.supplyId);
    if (supply === undefined) return [];
    return [
      {
        key: `${line.recipeStepId ?? "line"}-${index}`,
        supplyId: line.supplyId,
        amount: line.amount,
        ...shownUnit(supply, line.typedUnit, choices.measures),
        words: line.words,
        recipeStepId: line.recipeStepId,
      },
    ];
  });
  const cartons = bill.cartons.map((supplyId): DraftCarton => ({ supplyId, sizes: "", cut: "" }));
  return {
    ...draft,
    lines,
    withoutRecipe,
    cartons: cartons.length === 0 ? draft.cartons : cartons,
    overfull: bill.over,
  };
}

/** The recipe in the chosen style; a type that has only another style is packed by that one. */
function recipeFor(
  recipes: readonly RecipeVersion[],
  itemTypeId: string,
  draft: PackingDraft,
): RecipeVersion | null {
  for (const style of [draft.style, ...CUSHION_STYLES]) {
    const recipe = recipeOn(recipes, itemTypeId, style, draft.packedOn);
    if (recipe !== null) return recipe;
  }
  return null;
}
