import { z } from "zod";
import type { RecipeCarton, RecipeStep } from "#lib/packing/recipe-version";
import type { Day } from "#lib/units/day";
import { problemsOf } from "../_parts/form-state";
import { dayText, neededText, optionalText } from "../_parts/typed-fields";
import { bareMass, type CardTerms, cartonForm, isCartonRow, isStepRow, takenFields } from "./card-fields";
import { problemRows, rowsWords } from "./problem-rows";
import { typedRows } from "./typed-rows";

const LAST_PLACE = 999;

/** What a recipe form comes to: the version's parts, or the problems by field. */
export type RecipeReading =
  | {
      readonly kind: "recipe";
      readonly effectiveFrom: Day;
      readonly note: string | null;
      readonly steps: readonly Omit<RecipeStep, "id">[];
      readonly cartons: readonly RecipeCarton[];
      /** the bare piece, null where it was left out */
      readonly mass: { readonly mg: number; readonly typed: string } | null;
    }
  | { readonly kind: "refused"; readonly problems: Record<string, string> };

/**
 * Reads a recipe's form. Its rows are numbered (`words.0`, `amount.0`); a step without words and amount, or a
 * carton without a number of pieces, is left out. Steps follow their place number, then their row. A refusal names
 * the rows at the head of the form too.
 *
 * @param typed field names and texts; empty ones missing
 * @param terms supplies that a step may take, and how measures without a unit are read
 * @returns the recipe's parts, or what to mend
 */
export function readRecipe(typed: Readonly<Record<string, string>>, terms: CardTerms): RecipeReading {
  const problems: Record<string, string> = {};
  const read = <T>(form: z.ZodType<T>, values: unknown, row: number | null): T[] => {
    const result = form.safeParse(values);
    if (result.success) return [result.data];
    for (const [field, words] of Object.entries(problemsOf(result.error))) {
      problems[row === null ? field : `${field}.${row}`] = words;
    }
    return [];
  };
  const headForm = z.object({ effectiveFrom: dayText, note: optionalText, mass: bareMass(terms.measures) });
  const [head] = read(headForm, typed, null);
  const rows = typedRows(typed);
  const steps = rows
    .filter(isStepRow)
    .flatMap(({ row, values }) => read(stepForm(values["supplyId"], terms), values, row))
    .sort((first, second) => first.place - second.place);
  const cartons = rows
    .filter(isCartonRow)
    .flatMap(({ row, values }) => read(cartonForm(terms), values, row))
    .sort((first, second) => first.upTo - second.upTo);
  const wrongRows = problemRows(problems);
  if (wrongRows.length > 0)
    problems[""] = `Not saved. Mend ${rowsWords(wrongRows)}; all that was typed is kept.`;
  if (steps.length === 0 && Object.keys(problems).length === 0)
    problems[""] = "Write at least one step with its amount.";
  if (new Set(cartons.map((carton) => carton.upTo)).size < cartons.length) {
    problems[""] = "Two cartons hold up to the same number of pieces. Give each its own number.";
  }
  if (head === undefined || Object.keys(problems).length > 0) return { kind: "refused", problems };
  const { effectiveFrom, note, mass = null } = head;
  return {
    kind: "recipe",
    effectiveFrom,
    note,
    mass,
    steps: steps.map(({ place: _place, amount, ...step }, position) => ({ ...step, ...amount, position })),
    cartons,
  };
}

function stepForm(supplyId: string | undefined, terms: CardTerms) {
  return z.object({
    place: z
      .string()
      .regex(/^\d{1,3}$/, "Write a place like 3.")
      .transform(Number)
      .default(LAST_PLACE),
    words: neededText("Say what is done, like “Pad the handles”."),
    ...takenFields(supplyId, terms),
  });
}
