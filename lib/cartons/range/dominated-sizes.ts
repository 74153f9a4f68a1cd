import type { RangeTable } from "#lib/cartons/range/range-table";

/** A size that need not be stocked, and one that holds all its parcels for no more. */
export type DominatedSize = { readonly size: number; readonly by: number };

/**
 * Sizes that no best range needs: another holds every parcel that they hold and costs no more for any. A size that is
 * merely never the cheapest of all may still be the best compromise where few sizes are stocked, and is not meant.
 *
 * @param table what parcels cost in each candidate
 * @returns dominated sizes, each with one that is not dominated itself; of equal ones the first stays
 * @example dominatedSizes({ candidates: ["a", "b"], rows: [{ parcels: 1, values: [4, 5] }], unpackedValue: 9 })
 *   // [{ size: 1, by: 0 }]
 */
export function dominatedSizes(table: RangeTable): DominatedSize[] {
  const sizes = [...table.candidates.keys()];
  const isNeverCheaper = (size: number, by: number): boolean =>
    table.rows.every(({ values }) => (values[by] ?? Infinity) <= (values[size] ?? Infinity));
  // Of two equal ones the first stays. The rule is an order, so that above each dominated size stands one that is not.
  const isDominated = (size: number, by: number): boolean =>
    size !== by && isNeverCheaper(size, by) && (by < size || !isNeverCheaper(by, size));
  const kept = sizes.filter((size) => !sizes.some((by) => isDominated(size, by)));
  return sizes.flatMap((size) => {
    const by = kept.includes(size) ? undefined : kept.find((each) => isDominated(size, each));
    return by === undefined ? [] : [{ size, by }];
  });
}
