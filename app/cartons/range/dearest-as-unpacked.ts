import type { CostTable } from "#lib/cartons/range/cost-table";

/** A parcel that no stocked size holds counts so many times the dearest that is held: it is avoided, not averaged away. */
const UNPACKED_TIMES = 10;
/** A parcel of a hundred thousand major units: dearer than any. */
const DEARER_THAN_ANY = 100_000 * 100 * 10_000;

/**
 * A cost table in which a parcel that fits nothing counts ten times the dearest that is held.
 *
 * @param tableWith the table for an unpacked value, 1/10,000 minor unit
 */
export function dearestAsUnpacked(tableWith: (unpackedValue: number) => CostTable): CostTable {
  const rough = tableWith(DEARER_THAN_ANY);
  const dearest = rough.table.rows.reduce(
    (most, { values }) => values.reduce<number>((high, value) => Math.max(high, value ?? 0), most),
    1,
  );
  return { ...rough, table: { ...rough.table, unpackedValue: dearest * UNPACKED_TIMES } };
}
