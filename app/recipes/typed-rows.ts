const MOST_ROWS = 40;
const ROW_FIELD = /^([A-Za-z]+)\.(\d+)$/;

/** A row of a form: its number from 0 and its texts by field. */
export type TypedRow = { readonly row: number; readonly values: Readonly<Record<string, string>> };

/**
 * The numbered fields of a form (`words.0`, `amount.0`) by row.
 *
 * @param typed field names and texts; empty ones missing
 * @returns the rows in their order, 40 at most
 * @example typedRows({ "amount.1": "2", note: "x" }) // [{ row: 1, values: { amount: "2" } }]
 */
export function typedRows(typed: Readonly<Record<string, string>>): readonly TypedRow[] {
  const rows = new Map<number, Record<string, string>>();
  for (const [name, value] of Object.entries(typed)) {
    const match = ROW_FIELD.exec(name);
    const row = Number(match?.[2] ?? Number.NaN);
    if (match === null || row >= MOST_ROWS) continue;
    rows.set(row, { ...rows.get(row), [match[1] ?? ""]: value });
  }
  return [...rows].sort(([first], [second]) => first - second).map(([row, values]) => ({ row, values }));
}
