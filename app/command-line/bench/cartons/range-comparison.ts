import { type CostTable, costTable } from "#lib/cartons/range/cost-table";
import { mergedRows } from "#lib/cartons/range/merged-rows";
import { rangeCost } from "#lib/cartons/range/range-cost";
import { type CartonRange, type RangeMeans, rangeOf } from "#lib/cartons/range/range-of";
import type { RangeTable } from "#lib/cartons/range/range-table";
import { CUBE_SIZES, giftwareLoads, RANGE_CANDIDATES, RANGE_TERMS, TODAYS_LADDER } from "./range-giftware";

/** What one seed of invented products comes to; values in 1/10,000 minor units. */
export type RangeComparison = {
  readonly built: CostTable;
  /** parcels that the 16 in cube holds, which are compared, and all parcels */
  readonly parcels: number;
  readonly allParcels: number;
  readonly table: RangeTable;
  readonly best: CartonRange;
  readonly bestCubes: CartonRange;
  readonly todayValue: number;
};

const SIZES = TODAYS_LADDER.length;

/**
 * The best range of six of all candidates, the best six cubes, and today's six even cubes, for the same parcels. Compared
 * are those that the largest cube holds, so that all three pack everything and no unpacked value tips the balance.
 *
 * @param seed of the invented products
 * @param count parcels, or null for all of the file
 * @param means solver, time, clock
 * @returns ranges and costs
 */
export async function rangeComparison(
  seed: number,
  count: number | null,
  means: RangeMeans,
): Promise<RangeComparison> {
  const built = costTable(giftwareLoads(seed, count), RANGE_CANDIDATES, RANGE_TERMS);
  const largest = CUBE_SIZES.at(-1) ?? -1;
  const rows = built.table.rows.filter(({ values }) => (values[largest] ?? null) !== null);
  const table = { ...built.table, rows };
  const best = await rangeOf(table, SIZES, means);
  const bestCubes = await rangeOf(onlyCubes(table), SIZES, means);
  const todayValue = rangeCost(table, TODAYS_LADDER).value;
  return {
    built,
    parcels: parcelsOf(table),
    allParcels: parcelsOf(built.table),
    table,
    best,
    bestCubes,
    todayValue,
  };
}

/**
 * All parcels of a table.
 *
 * @param table rows with their parcels
 */
export function parcelsOf({ rows }: RangeTable): number {
  return rows.reduce((sum, { parcels }) => sum + parcels, 0);
}

/** The cubes stand first among the candidates, so that they keep their places. */
function onlyCubes(table: RangeTable): RangeTable {
  const rows = table.rows.map((row) => ({ ...row, values: row.values.slice(0, CUBE_SIZES.length) }));
  return { ...table, candidates: table.candidates.slice(0, CUBE_SIZES.length), rows: mergedRows(rows) };
}
