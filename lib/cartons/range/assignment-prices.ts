import type { RangeSpace } from "#lib/cartons/range/range-space";

/** Sizes that a better range must stock, and such that it cannot. */
export type Settled = { readonly kept: ReadonlySet<number>; readonly dropped: ReadonlySet<number> };

/** What is known once each row has a price: a cost that no range is below, and the sizes that the prices would stock. */
export type PricedRanges = {
  readonly bound: number;
  /** those settled first, then by what they take off, most first */
  readonly picked: readonly number[];
  /** what stocking a size takes off the sum of the prices, zero or below */
  readonly reduced: ReadonlyMap<number, number>;
};

/**
 * Ranges with the rule relaxed that each row goes into one size: a row pays its price and takes it off wherever a
 * stocked size is cheaper. What the best sizes leave of the prices is a bound, as no range can do better by the rule.
 * Prices are whole multiples of a power of two, so that every sum here is exact.
 *
 * @param space rows and sizes
 * @param prices one for each row, at most what it counts unpacked
 * @param most sizes that may be stocked
 * @param settled what is known of a better range
 * @returns bound and sizes
 * @see Lagrangian relaxation of the assignment: Cornuéjols, Fisher and Nemhauser (1977), from memory
 * @example pricedRanges(space, space.rows.map(({ unpacked }) => unpacked), 6, settled).bound
 */
export function pricedRanges(
  { sizes, rows }: RangeSpace,
  prices: readonly number[],
  most: number,
  { kept, dropped }: Settled,
): PricedRanges {
  const reduced = new Map<number, number>(sizes.map((size) => [size, 0]));
  const off = new Float64Array(Math.max(-1, ...sizes) + 1);
  let sum = 0;
  for (const [at, { options }] of rows.entries()) {
    const price = prices[at] ?? 0;
    sum += price;
    for (const { size, total } of options) {
      if (total >= price) break;
      off[size] = (off[size] ?? 0) + total - price;
    }
  }
  for (const size of sizes) reduced.set(size, off[size] ?? 0);
  const free = sizes
    .filter((size) => !kept.has(size) && !dropped.has(size))
    .toSorted((a, b) => (reduced.get(a) ?? 0) - (reduced.get(b) ?? 0));
  const picked = [...kept, ...free.slice(0, Math.max(0, most - kept.size))];
  return { bound: picked.reduce((rest, size) => rest + (reduced.get(size) ?? 0), sum), picked, reduced };
}

/**
 * Sizes settled by a bound: one that would lift it to what a known range costs is not in a better range, and one
 * without which it would is in every better range.
 *
 * @param space rows and sizes
 * @param priced bound, sizes and what they take off
 * @param known what the best known range costs
 * @param settled what was settled before
 * @returns all that is settled
 * @example settledSizes(space, priced, 1_000, { kept: new Set(), dropped: new Set() }).dropped
 */
export function settledSizes(
  { sizes }: RangeSpace,
  { bound, picked, reduced }: PricedRanges,
  known: number,
  settled: Settled,
): Settled {
  const off = (size: number | undefined): number => (size === undefined ? 0 : (reduced.get(size) ?? 0));
  const free = sizes.filter((size) => !settled.kept.has(size) && !settled.dropped.has(size));
  const inside = picked.filter((size) => !settled.kept.has(size));
  const outside = free.filter((size) => !inside.includes(size));
  const last = inside.at(-1);
  const next = outside.toSorted((a, b) => off(a) - off(b))[0];
  const gone = outside.filter((size) => last === undefined || bound - off(last) + off(size) >= known);
  const stays = inside.filter((size) => bound - off(size) + off(next) >= known);
  return {
    kept: new Set([...settled.kept, ...stays]),
    dropped: new Set([...settled.dropped, ...gone]),
  };
}
