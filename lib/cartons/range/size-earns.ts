import { rangeCost } from "#lib/cartons/range/range-cost";
import type { RangeTable } from "#lib/cartons/range/range-table";

/** What a stocked size is there for. */
export type EarningSize = {
  readonly size: number;
  /** parcels that go into it */
  readonly parcels: number;
  /** what all parcels would cost more without it, 1/10,000 minor units; the unpacked value for each that fits no other */
  readonly earnedValue: number;
  /** parcels that no other stocked size holds */
  readonly onlyHere: number;
};

/**
 * What each stocked size earns: what would be paid more if it alone were dropped and its parcels went into the others.
 * The figures of several sizes do not add up, as each may stand in for the other.
 *
 * @param table what parcels cost in each candidate
 * @param chosen stocked sizes, each once
 * @returns sizes in the order given
 * @throws RangeError for a size that is no candidate or comes twice
 * @example sizeEarns(table, [0, 4])[0]?.earnedValue
 */
export function sizeEarns(table: RangeTable, chosen: readonly number[]): EarningSize[] {
  const now = rangeCost(table, chosen);
  return chosen.map((size, at) => {
    const without = rangeCost(
      table,
      chosen.filter((other) => other !== size),
    );
    return {
      size,
      parcels: now.parcels[at] ?? 0,
      earnedValue: without.value - now.value,
      onlyHere: without.unpackedParcels - now.unpackedParcels,
    };
  });
}
