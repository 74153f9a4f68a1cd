import type { RecipeStep, RecipeVersion } from "#lib/packing/recipe-version";
import { type Amount, scaleAmount, sumAmounts } from "#lib/units/amount";

/** What a parcel takes of one supply by one step. */
export type BillLine = {
  readonly supplyId: string;
  readonly amount: Amount;
  readonly recipeStepId: string | null;
  readonly words: string;
  readonly typedValue: string;
  readonly typedUnit: string;
};

/** A parcel's bill of materials. `over` says that the parcel has more pieces than the recipe's cartons cover. */
export type Bill = {
  readonly lines: readonly BillLine[];
  readonly cartons: readonly string[];
  readonly over: boolean;
};

/** Some pieces of one item type in a parcel, with the recipe that holds for them. */
type BillPart = {
  readonly itemTypeId: string;
  readonly pieces: number;
  readonly recipe: RecipeVersion;
};

/**
 * The supplies that a parcel takes. Steps per piece are taken for each piece. Steps per parcel are taken once: for
 * each supply, those of the recipe that asks for most of it (the earlier part where two ask for as much). The carton
 * comes once, from the list of the leading item type, by all pieces of the parcel.
 *
 * @param contents - `parts`: item types, whole pieces from 1, recipes. `carton`: the one chosen instead of the
 *   recipe's, null for none from stock. `cartons`: all chosen cartons from the outside in, before `carton`
 * @returns lines without the cartons, in the order of parts and steps; cartons from the outside in
 * @throws RangeError if the pieces of a part are not a whole number from 1
 * @see common practice, no published source: wraps go by the piece, fill and sealing by the parcel
 * @example billOfMaterials({ parts: [{ itemTypeId: "mug", pieces: 3, recipe: thirdOfASheet }] }).lines[0]?.amount
 *   // 12000
 */
export function billOfMaterials(contents: {
  readonly parts: readonly BillPart[];
  readonly carton?: { readonly supplyId: string } | null;
  readonly cartons?: readonly string[];
}): Bill {
  for (const { pieces } of contents.parts) {
    if (!Number.isSafeInteger(pieces) || pieces < 1) {
      throw new RangeError(`billOfMaterials requires whole pieces from 1, got ${pieces}`);
    }
  }
  const lines = contents.parts.flatMap((part, index) =>
    inOrder(part.recipe.steps).flatMap((step) => {
      if (step.per === "piece") return [pieceLine(step, part.pieces)];
      return leadingPart(contents.parts, step.supplyId) === index ? [parcelLine(step)] : [];
    }),
  );
  if (contents.cartons !== undefined) return { lines, cartons: contents.cartons, over: false };
  if (contents.carton !== undefined) {
    return { lines, cartons: contents.carton === null ? [] : [contents.carton.supplyId], over: false };
  }
  return { lines, ...recipeCarton(contents.parts) };
}

function inOrder(steps: readonly RecipeStep[]): readonly RecipeStep[] {
  return [...steps].sort((a, b) => a.position - b.position);
}

function pieceLine(step: RecipeStep, pieces: number): BillLine {
  const typedValue = pieces === 1 ? step.typedValue : `${pieces} × ${step.typedValue}`;
  return { ...parcelLine(step), amount: scaleAmount(step.amount, pieces), typedValue };
}

function parcelLine(step: RecipeStep): BillLine {
  const { id, supplyId, amount, words, typedValue, typedUnit } = step;
  return { supplyId, amount, recipeStepId: id, words, typedValue, typedUnit };
}

/** Place of the part whose recipe asks for most of a supply once a parcel. */
function leadingPart(parts: readonly BillPart[], supplyId: string): number {
  const totals = parts.map(({ recipe }): number => {
    const steps = recipe.steps.filter((step) => step.per === "parcel" && step.supplyId === supplyId);
    return steps.length === 0 ? -1 : sumAmounts(steps.map((step) => step.amount));
  });
  return totals.indexOf(Math.max(...totals));
}

function recipeCarton(parts: readonly BillPart[]): {
  readonly cartons: readonly string[];
  readonly over: boolean;
} {
  const pieces = parts.reduce((sum, part) => sum + part.pieces, 0);
  const leading = parts.reduce<BillPart | undefined>(
    (most, part) => (most === undefined || part.pieces > most.pieces ? part : most),
    undefined,
  );
  const list = [...(leading?.recipe.cartons ?? [])].sort((a, b) => a.upTo - b.upTo);
  const carton = list.find(({ upTo }) => pieces <= upTo) ?? list.at(-1);
  if (carton === undefined) return { cartons: [], over: false };
  return { cartons: [carton.supplyId], over: pieces > carton.upTo };
}
