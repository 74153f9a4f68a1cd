import { randomUUID } from "node:crypto";
import type { DraftedRecipe } from "#lib/packing/recipe/drafted-recipe";
import type { CushionStyle, RecipeVersion } from "#lib/packing/recipe-version";
import type { Day } from "#lib/units/day";
import type { Recipe } from "#prisma/records/recipes";

const NOTE =
  "Drafted from the sizes of the piece, not from your own figures: pack one, weigh it, and send a test parcel.";

/**
 * A drafted card as a recipe version. Cartons for other numbers of pieces stay as the card before had them.
 *
 * @param drafted the draft
 * @param of item type, style and the day from which it holds
 * @param before the card that holds until then, or null
 * @returns the version to save
 */
export function keptDraft(
  drafted: DraftedRecipe,
  of: { readonly itemTypeId: string; readonly style: CushionStyle; readonly effectiveFrom: Day },
  before: RecipeVersion | null,
): Recipe {
  const drawn = new Set(drafted.cartons.map(({ upTo }) => upTo));
  const others = (before?.cartons ?? []).filter(({ upTo }) => !drawn.has(upTo));
  return {
    id: randomUUID(),
    ...of,
    commonPractice: true,
    note: NOTE,
    steps: drafted.steps.map(({ words, supplyId, amount, typedValue, typedUnit, per }, position) => ({
      id: randomUUID(),
      position,
      words,
      supplyId,
      amount,
      typedValue,
      typedUnit,
      per,
    })),
    cartons: [...drafted.cartons, ...others].toSorted((a, b) => a.upTo - b.upTo),
  };
}
