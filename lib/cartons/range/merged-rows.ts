import type { RangeRow } from "#lib/cartons/range/range-table";

/**
 * Rows of equal values as one, their parcels added: they always go into the same size.
 *
 * @param rows as they come
 * @returns each list of values once, in the order of its first row
 * @example mergedRows([{ parcels: 2, values: [5, null] }, { parcels: 1, values: [5, null] }]) // one row of 3 parcels
 */
export function mergedRows(rows: readonly RangeRow[]): RangeRow[] {
  const merged = new Map<string, RangeRow>();
  for (const row of rows) {
    const key = row.values.join();
    const known = merged.get(key);
    merged.set(key, known === undefined ? row : { ...known, parcels: known.parcels + row.parcels });
  }
  return [...merged.values()];
}
