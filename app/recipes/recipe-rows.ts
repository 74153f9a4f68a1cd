import type { RecipeVersion } from "#lib/packing/recipe-version";
import type { Supply } from "#prisma/records/supplies";

const SPARE_STEPS = 2;
const LEAST_STEPS = 4;
const SPARE_CARTONS = 1;

/** A card as the fields of its form, with a few empty rows to go on. */
export type RecipeRows = {
  readonly steps: readonly {
    readonly words: string;
    readonly supplyId: string;
    readonly amount: string;
    readonly per: string;
  }[];
  readonly cartons: readonly { readonly upTo: string; readonly supplyId: string }[];
};

/**
 * The rows of a card's form.
 *
 * @param recipe the version to start from, or null for a first one
 * @param supplies what may be chosen: the first is offered in empty rows
 * @returns the rows, empty ones at the end
 */
export function recipeRows(recipe: RecipeVersion | null, supplies: readonly Supply[]): RecipeRows {
  const known = recipe?.steps ?? [];
  const firstSupply = supplies.find((supply) => supply.kind !== "carton")?.id ?? "";
  const firstCarton = supplies.find((supply) => supply.kind === "carton")?.id ?? "";
  const spare = Math.max(SPARE_STEPS, LEAST_STEPS - known.length);
  return {
    steps: [
      ...known.map((step) => ({
        words: step.words,
        supplyId: step.supplyId,
        amount: `${step.typedValue} ${step.typedUnit}`.trim(),
        per: step.per,
      })),
      ...Array.from({ length: spare }, () => ({
        words: "",
        supplyId: firstSupply,
        amount: "",
        per: "piece",
      })),
    ],
    cartons: [
      ...(recipe?.cartons ?? []).map((carton) => ({ upTo: String(carton.upTo), supplyId: carton.supplyId })),
      ...Array.from({ length: SPARE_CARTONS }, () => ({ upTo: "", supplyId: firstCarton })),
    ],
  };
}
