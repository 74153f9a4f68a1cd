import type { RangeRow, RangeTable } from "#lib/cartons/range/range-table";

/** What a range of sizes costs, told from the table alone. */
export type RangeCost = {
  /** all parcels, those that fit none included; whole 1/10,000 minor units */
  readonly value: number;
  /** parcels that none of the sizes holds */
  readonly unpackedParcels: number;
  /** parcels that go into each chosen size, in the order chosen */
  readonly parcels: readonly number[];
};

/**
 * What a range costs by its rule: each parcel goes into the cheapest stocked size that holds it, the first of equal
 * ones, and counts the unpacked value where none does. Shares nothing with what looks for ranges.
 *
 * @param table what parcels cost in each candidate
 * @param chosen sizes, each once
 * @returns the cost and where the parcels go
 * @throws RangeError for a size that is no candidate or comes twice
 * @example rangeCost(table, [0, 4]).unpackedParcels
 */
export function rangeCost(table: RangeTable, chosen: readonly number[]): RangeCost {
  const wrong = chosen.find((size) => table.candidates[size] === undefined);
  if (wrong !== undefined || new Set(chosen).size !== chosen.length) {
    throw new RangeError(`rangeCost requires candidates, each once, got ${chosen.join(", ")}`);
  }
  const parcels = chosen.map(() => 0);
  let value = 0;
  let unpackedParcels = 0;
  for (const row of table.rows) {
    const into = cheapestOf(row, chosen);
    const packed = into === null ? null : (row.values[chosen[into] ?? -1] ?? null);
    value += row.parcels * (packed ?? table.unpackedValue);
    if (into === null) unpackedParcels += row.parcels;
    else parcels[into] = (parcels[into] ?? 0) + row.parcels;
  }
  return { value, unpackedParcels, parcels };
}

/** Place of the size among those chosen, from 0. */
function cheapestOf({ values }: RangeRow, chosen: readonly number[]): number | null {
  let into: number | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (const [at, size] of chosen.entries()) {
    const here = values[size] ?? Number.POSITIVE_INFINITY;
    if (here < least) {
      least = here;
      into = at;
    }
  }
  return into;
}
