import type { RecipeVersion } from "#lib/packing/recipe-version";
import type { Supply } from "#prisma/records/supplies";

const SPARE_STEPS = 2;
const LEAST_STEPS = 4;
const SPARE_CARTONS = 1;

/** A card as its form shows it: how many rows, a few empty ones to go on, and the texts by field. */
export type RecipeRows = {
  readonly steps: number;
  readonly cartons: number;
  /** as if the card had just been typed; empty fields missing */
  readonly typed: Readonly<Record<string, string>>;
};

/**
 * The rows of a card's form.
 *
 * @param recipe the version to start from, or null for a first one
 * @param supplies what may be chosen: the first is offered in empty rows
 * @param mass what the bare piece weighs, as text; empty where it was never weighed
 * @returns the rows, empty ones at the end
 */
export function recipeRows(
  recipe: RecipeVersion | null,
  supplies: readonly Supply[],
  mass: string,
): RecipeRows {
  const known = recipe?.steps ?? [];
  const firstSupply = supplies.find((supply) => supply.kind !== "carton")?.id ?? "";
  const firstCarton = supplies.find((supply) => supply.kind === "carton")?.id ?? "";
  const spare = Math.max(SPARE_STEPS, LEAST_STEPS - known.length);
  const steps = [
    ...known.map((step) => ({
      words: step.words,
      supplyId: step.supplyId,
      amount: `${step.typedValue} ${step.typedUnit}`.trim(),
      per: step.per,
    })),
    ...Array.from({ length: spare }, () => ({ words: "", supplyId: firstSupply, amount: "", per: "piece" })),
  ];
  const cartons = [
    ...(recipe?.cartons ?? []).map((carton) => ({ upTo: String(carton.upTo), cartonId: carton.supplyId })),
    ...Array.from({ length: SPARE_CARTONS }, () => ({ upTo: "", cartonId: firstCarton })),
  ];
  const texts = [
    ["mass", mass],
    ...steps.flatMap((step, row) => rowTexts({ place: String(row + 1), ...step }, row)),
    ...cartons.flatMap(rowTexts),
  ];
  return {
    steps: steps.length,
    cartons: cartons.length,
    typed: Object.fromEntries(texts.filter(([, text]) => text !== "")),
  };
}

function rowTexts(fields: Readonly<Record<string, string>>, row: number): [string, string][] {
  return Object.entries(fields).map(([field, text]) => [`${field}.${row}`, text]);
}
