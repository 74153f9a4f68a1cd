import { amount } from "#lib/units/amount";
import { amountAsTyped, parseAmount } from "#lib/units/amount-text";
import type { UseUnit } from "#lib/units/use-unit";
import type { ParcelLine } from "#prisma/records/parcel-body";
import type { ParcelForm } from "./parcel-form";
import type { ParcelProblem } from "./parcel-problem";

type FormLine = NonNullable<ParcelForm["lines"]>[number];

type LineReader = {
  readonly measures: "imperial" | "metric";
  readonly supplies: readonly { readonly id: string; readonly useUnit: UseUnit }[];
};

/**
 * Reads one line of a form: the stored amount where it is given, else the typed value in its unit.
 * @param line the line as sent
 * @param index place in the list, for the name of the field
 * @param reader the shop's measures and supplies
 * @returns the line with amount and what was typed, or what is wrong with it
 */
export function formLineOf(
  line: FormLine,
  index: number,
  reader: LineReader,
): { kind: "line"; line: ParcelLine } | { kind: "problem"; problem: ParcelProblem } {
  const supply = reader.supplies.find((candidate) => candidate.id === line.supplyId);
  if (supply === undefined)
    return problem(`lines.${index}.supplyId`, `There is no supply “${line.supplyId}”.`, LIST_WAY_OUT);
  const head = {
    supplyId: line.supplyId,
    recipeStepId: line.recipeStepId ?? null,
    ...(line.words ? { words: line.words } : {}),
  };
  if (line.amount !== undefined) {
    const stored = amount(line.amount);
    return {
      kind: "line",
      line: {
        ...head,
        amount: stored,
        typedValue: line.value ?? amountAsTyped(stored, "each"),
        typedUnit: line.unit ?? supply.useUnit,
      },
    };
  }
  if (line.value === undefined) {
    return problem(`lines.${index}.value`, `The line for “${line.supplyId}” says no amount.`, AMOUNT_WAY_OUT);
  }
  const read = parseAmount(`${line.value} ${line.unit ?? ""}`.trim(), supply.useUnit, reader.measures);
  if (read.kind === "unreadable" || read.amount < 0) {
    return problem(
      `lines.${index}.value`,
      `“${line.value} ${line.unit ?? ""}” can't be read.`,
      AMOUNT_WAY_OUT,
    );
  }
  return {
    kind: "line",
    line: { ...head, amount: read.amount, typedValue: read.typedValue, typedUnit: read.typedUnit },
  };
}

const LIST_WAY_OUT = "Use the id of a supply from the list of supplies.";
const AMOUNT_WAY_OUT = "Type an amount like 1 1/3, 0.5 or 3 ft.";

function problem(
  field: string,
  message: string,
  wayOut: string,
): { kind: "problem"; problem: ParcelProblem } {
  return { kind: "problem", problem: { field, message, wayOut } };
}
