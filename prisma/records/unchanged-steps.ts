import { type RecipeStep, type RecipeVersion, recipeOn } from "#lib/packing/recipe-version";
import type { Day } from "#lib/units/day";

/**
 * Which step of a card that holds on a day each step is, by its id: itself, or the one as which it goes on unchanged where
 * a newer version changed another step. What was counted for it, and what the seller said about it, stays true.
 *
 * @param recipes all versions of the item types in use
 * @param today the day
 * @returns by id of a step of any version; a step that goes on in no card is not in it
 */
export function unchangedSteps<Version extends RecipeVersion>(
  recipes: readonly Version[],
  today: Day,
): ReadonlyMap<string, { readonly step: RecipeStep; readonly recipe: Version }> {
  const found = new Map<string, { readonly step: RecipeStep; readonly recipe: Version }>();
  for (const version of recipes) {
    const recipe = recipeOn(recipes, version.itemTypeId, version.style, today);
    if (recipe === null) continue;
    const free = [...recipe.steps];
    for (const before of version.steps) {
      const at = free.findIndex((each) => each.id === before.id || isSame(each, before));
      const [step] = at < 0 ? [] : free.splice(at, 1);
      if (step !== undefined) found.set(before.id, { step, recipe });
    }
  }
  return found;
}

function isSame(one: RecipeStep, other: RecipeStep): boolean {
  return (
    one.supplyId === other.supplyId &&
    one.amount === other.amount &&
    one.per === other.per &&
    one.words === other.words
  );
}
