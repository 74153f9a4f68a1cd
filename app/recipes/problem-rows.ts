/** A row of the form of a card: a step or a carton, counted from the top. */
export type ProblemRow = { readonly of: "step" | "carton"; readonly row: number };

const CARTON_FIELDS: readonly string[] = ["upTo", "cartonId"];

/**
 * The rows that problems stand in, each once, steps before cartons.
 *
 * @param problems problem by field (`amount.2`); fields without a row are left out
 * @returns rows counted from 0
 */
export function problemRows(problems: Readonly<Record<string, string>>): readonly ProblemRow[] {
  const found = Object.keys(problems).flatMap((name): ProblemRow[] => {
    const [field = "", row] = name.split(".");
    if (row === undefined) return [];
    return [{ of: CARTON_FIELDS.includes(field) ? "carton" : "step", row: Number(row) }];
  });
  const rowsOf = (of: ProblemRow["of"]) =>
    [...new Set(found.filter((each) => each.of === of).map(({ row }) => row))]
      .sort((a, b) => a - b)
      .map((row) => ({ of, row }));
  return [...rowsOf("step"), ...rowsOf("carton")];
}

/**
 * Rows in words, counted from 1.
 *
 * @param rows one row or more
 * @returns "row 3", "row 3, carton row 1"
 * @example rowsWords([{ of: "step", row: 2 }]) // "row 3"
 */
export function rowsWords(rows: readonly ProblemRow[]): string {
  return rows.map(({ of, row }) => `${of === "carton" ? "carton row" : "row"} ${row + 1}`).join(", ");
}
