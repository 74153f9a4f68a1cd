import type { ZodError } from "zod";
import type { Amount } from "#lib/units/amount";
import type { Measures } from "#lib/units/measures";
import type { Supply } from "#prisma/records/supplies";
import { amountAboveZero, wholeNumber } from "../_parts/typed-fields";
import { EXTRA_ROWS } from "./receive-order-fields";

/** Something that came along without being ordered or paid for. */
type FreeLine = {
  readonly supplyId: string;
  readonly packs: number;
  readonly packAmount: Amount;
  readonly packTyped: string;
};

/** What came along free of charge, or what to mend by field. */
export type ExtrasReading =
  | { readonly kind: "extras"; readonly lines: readonly FreeLine[] }
  | { readonly kind: "problems"; readonly problems: Readonly<Record<string, string>> };

const MOST_PACKS = 10_000;

/**
 * Reads the rows of what came along free of charge: `extra:1`, `extraPacks:1`, `extraAmount:1` and so on.
 *
 * @param typed all fields by name, as sent
 * @param supplies to choose from
 * @param measures for amounts without a unit
 * @returns a line for each filled row, or what to mend
 */
export function readFreeExtras(
  typed: Readonly<Record<string, string>>,
  supplies: readonly Supply[],
  measures: Measures,
): ExtrasReading {
  const rows = EXTRA_ROWS.map((row) => readRow(row, typed, { supplies, measures }));
  const problems = Object.assign({}, ...rows.map((row) => row.problems));
  const lines = rows.flatMap((row) => (row.line === null ? [] : [row.line]));
  return Object.keys(problems).length > 0 ? { kind: "problems", problems } : { kind: "extras", lines };
}

type RowReading = { readonly line: FreeLine | null; readonly problems: Readonly<Record<string, string>> };

function readRow(
  row: number,
  typed: Readonly<Record<string, string>>,
  { supplies, measures }: { readonly supplies: readonly Supply[]; readonly measures: Measures },
): RowReading {
  const [supplyId, packsText, amountText] = ["extra", "extraPacks", "extraAmount"].map(
    (part) => typed[`${part}:${row}`],
  );
  if ([supplyId, packsText, amountText].every((text) => text === undefined))
    return { line: null, problems: {} };
  const supply = supplies.find((each) => each.id === supplyId);
  if (supply === undefined) {
    return {
      line: null,
      problems: { [`extra:${row}`]: "Choose which supply came along, or empty the row." },
    };
  }
  const packs = wholeNumber(1, MOST_PACKS).safeParse(packsText);
  const amount = amountAboveZero(supply.useUnit, measures).safeParse(amountText);
  if (packs.success && amount.success) {
    const packTyped = `${amount.data.typedValue} ${amount.data.typedUnit}`.trim();
    const line = { supplyId: supply.id, packs: packs.data, packAmount: amount.data.amount, packTyped };
    return { line, problems: {} };
  }
  const problems = {
    ...(packs.success ? {} : { [`extraPacks:${row}`]: firstProblem(packs.error) }),
    ...(amount.success ? {} : { [`extraAmount:${row}`]: firstProblem(amount.error) }),
  };
  return { line: null, problems };
}

function firstProblem(error: ZodError): string {
  return error.issues[0]?.message ?? "This can’t be read.";
}
