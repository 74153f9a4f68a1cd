import type { RecipeCarton } from "#lib/packing/recipe-version";

/**
 * Which carton takes how many pieces, in words.
 *
 * @param cartons smallest number of pieces first
 * @param nameOf the name of a supply
 * @returns a sentence
 * @example cartonWords([{ upTo: 1, supplyId: "a" }, { upTo: 4, supplyId: "b" }], (id) => id)
 *   // "Carton: a for one piece, b for up to 4."
 */
export function cartonWords(cartons: readonly RecipeCarton[], nameOf: (supplyId: string) => string): string {
  if (cartons.length === 0) return "No carton is named: the packer chooses.";
  const parts = cartons.map((carton, index) => {
    const pieces = carton.upTo === 1 ? "one piece" : `up to ${carton.upTo}${index === 0 ? " pieces" : ""}`;
    return `${nameOf(carton.supplyId)} for ${pieces}`;
  });
  return `Carton: ${parts.join(", ")}.`;
}
