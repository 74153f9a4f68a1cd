import { z } from "zod";
import type { RecipeCarton, RecipeStep } from "#lib/packing/recipe-version";
import type { Measures } from "#lib/units/measures";
import type { UseUnit } from "#lib/units/use-unit";
import { problemsOf } from "../_parts/form-state";
import { amountAboveZero, dayText, neededText, optionalText, wholeNumber } from "../_parts/typed-fields";

const MOST_PIECES = 999;
const MOST_ROWS = 40;
const ROW_FIELD = /^([A-Za-z]+)\.(\d+)$/;

const headForm = z.object({ effectiveFrom: dayText, note: optionalText });
const cartonForm = z.object({ upTo: wholeNumber(1, MOST_PIECES), cartonId: neededText("Choose a carton.") });

/** What a recipe form comes to: the version's parts, or the problems by field. */
export type RecipeReading =
  | {
      readonly kind: "recipe";
      readonly effectiveFrom: z.output<typeof headForm>["effectiveFrom"];
      readonly note: string | null;
      readonly steps: readonly Omit<RecipeStep, "id">[];
      readonly cartons: readonly RecipeCarton[];
    }
  | { readonly kind: "refused"; readonly problems: Record<string, string> };

/**
 * Reads a recipe's form. Its rows are numbered (`words.0`, `amount.0`); a step without words and amount, or a
 * carton without a number of pieces, is left out. Steps follow their place number, then their row.
 *
 * @param typed field names and texts; empty ones missing
 * @param units use unit of each supply that a step may take
 * @param measures how lengths without a unit are read
 * @returns the recipe's parts, or what to mend
 */
export function readRecipe(
  typed: Readonly<Record<string, string>>,
  units: ReadonlyMap<string, UseUnit>,
  measures: Measures,
): RecipeReading {
  const problems: Record<string, string> = {};
  const read = <T>(form: z.ZodType<T>, values: unknown, row: number | null): T[] => {
    const result = form.safeParse(values);
    if (result.success) return [result.data];
    for (const [field, words] of Object.entries(problemsOf(result.error))) {
      problems[row === null ? field : `${field}.${row}`] = words;
    }
    return [];
  };
  const [head] = read(headForm, typed, null);
  const rows = rowsOf(typed);
  const steps = rows
    .filter(({ values }) => values["words"] !== undefined || values["amount"] !== undefined)
    .flatMap(({ row, values }) => read(stepForm(units.get(values["supplyId"] ?? ""), measures), values, row))
    .sort((first, second) => first.place - second.place);
  const cartons = rows
    .filter(({ values }) => values["upTo"] !== undefined)
    .flatMap(({ row, values }) => read(cartonForm, values, row))
    .sort((first, second) => first.upTo - second.upTo);
  if (steps.length === 0 && Object.keys(problems).length === 0)
    problems[""] = "Write at least one step with its amount.";
  if (new Set(cartons.map((carton) => carton.upTo)).size < cartons.length) {
    problems[""] = "Two cartons hold up to the same number of pieces. Give each its own number.";
  }
  if (head === undefined || Object.keys(problems).length > 0) return { kind: "refused", problems };
  return {
    kind: "recipe",
    ...head,
    steps: steps.map(({ place: _place, amount, ...step }, position) => ({ ...step, ...amount, position })),
    cartons: cartons.map((carton) => ({ upTo: carton.upTo, supplyId: carton.cartonId })),
  };
}

function stepForm(unit: UseUnit | undefined, measures: Measures) {
  return z
    .object({
      place: z
        .string()
        .regex(/^\d{1,3}$/, "Write a place like 3.")
        .transform(Number)
        .default(MOST_PIECES),
      words: neededText("Say what is done, like “Pad the handles”."),
      supplyId: neededText("Choose what it takes.").refine(
        () => unit !== undefined,
        "Choose a supply of the list.",
      ),
      amount: amountAboveZero(unit ?? "each", measures),
      per: z.enum(["piece", "parcel"]),
    })
    .transform(({ amount, ...step }) => ({
      ...step,
      amount: { amount: amount.amount, typedValue: amount.typedValue, typedUnit: amount.typedUnit },
    }));
}

function rowsOf(typed: Readonly<Record<string, string>>) {
  const rows = new Map<number, Record<string, string>>();
  for (const [name, value] of Object.entries(typed)) {
    const match = ROW_FIELD.exec(name);
    const row = Number(match?.[2] ?? Number.NaN);
    if (match === null || row >= MOST_ROWS) continue;
    rows.set(row, { ...rows.get(row), [match[1] ?? ""]: value });
  }
  return [...rows].sort(([first], [second]) => first - second).map(([row, values]) => ({ row, values }));
}
