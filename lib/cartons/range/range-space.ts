import type { RangeTable } from "#lib/cartons/range/range-table";

/** A size that holds the parcels of a row, and what they all cost in it. */
export type SizeOption = { readonly size: number; readonly total: number };

/** Parcels of one row: what they cost where no size holds them, and the sizes that do, cheapest first. */
export type SpaceRow = { readonly unpacked: number; readonly options: readonly SizeOption[] };

/** A table as ranges are looked for in it: sizes worth a look, and rows of whole totals in 1/10,000 minor units. */
export type RangeSpace = {
  readonly sizes: readonly number[];
  readonly rows: readonly SpaceRow[];
};

/**
 * A table with its rows multiplied out and their sizes in order of cost.
 *
 * @param table what parcels cost in each candidate
 * @param leftOut sizes that are never chosen
 * @returns the space
 * @example rangeSpace(table, new Set()).rows[0]?.options[0] // the cheapest size of the first row
 */
export function rangeSpace(table: RangeTable, leftOut: ReadonlySet<number>): RangeSpace {
  const sizes = [...table.candidates.keys()].filter((size) => !leftOut.has(size));
  const rows = table.rows.map(({ parcels, values }) => ({
    unpacked: parcels * table.unpackedValue,
    options: sizes
      .flatMap((size) => {
        const value = values[size] ?? null;
        return value === null ? [] : [{ size, total: parcels * value }];
      })
      .toSorted((a, b) => a.total - b.total || a.size - b.size),
  }));
  return { sizes, rows };
}

/**
 * What all rows cost with a choice of sizes.
 *
 * @param space rows and sizes
 * @param chosen sizes
 * @returns whole 1/10,000 minor units
 * @example spaceValue(space, new Set([2, 5]))
 */
export function spaceValue({ rows }: RangeSpace, chosen: ReadonlySet<number>): number {
  let value = 0;
  for (const row of rows) value += paidBy(row, chosen);
  return value;
}

/**
 * What one row costs with a choice of sizes.
 *
 * @param row with its sizes in order of cost
 * @param chosen sizes
 * @returns whole 1/10,000 minor units
 * @example paidBy({ unpacked: 9, options: [{ size: 1, total: 4 }] }, new Set([1])) // 4
 */
export function paidBy({ options, unpacked }: SpaceRow, chosen: ReadonlySet<number>): number {
  for (const { size, total } of options) if (chosen.has(size)) return total;
  return unpacked;
}
