type Card = { readonly itemTypeId: string; readonly commonPractice: boolean };

/**
 * The first line of Recipes: what has a card and what still rests on common practice.
 *
 * @param itemTypes all item types in use
 * @param recipes all recipe versions
 * @returns a sentence
 * @example recipesFinding([], []) // "No recipes yet: copy the starter recipes of what you sell."
 */
export function recipesFinding(
  itemTypes: readonly { readonly id: string }[],
  recipes: readonly Card[],
): string {
  if (itemTypes.length === 0) return "No recipes yet: copy the starter recipes of what you sell.";
  const types = itemTypes.length === 1 ? "One item type" : `${itemTypes.length} item types`;
  const bare = itemTypes.filter(
    (itemType) => !recipes.some((recipe) => recipe.itemTypeId === itemType.id),
  ).length;
  if (bare > 0) return `${types}; ${bare} ${bare === 1 ? "has" : "have"} no recipe yet.`;
  const own = (id: string) => recipes.some((recipe) => recipe.itemTypeId === id && !recipe.commonPractice);
  const guessed = itemTypes.filter((itemType) => !own(itemType.id)).length;
  if (guessed === 0) return `${types}, each with a recipe of your own.`;
  return `${types} with recipes; ${guessed} still on common practice.`;
}
