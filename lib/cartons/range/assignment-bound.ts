import {
  type PricedRanges,
  pricedRanges,
  type Settled,
  settledSizes,
} from "#lib/cartons/range/assignment-prices";
import { type FoundRange, interchangedRange } from "#lib/cartons/range/interchanged-range";
import { paidBy, type RangeSpace, type SpaceRow, spaceValue } from "#lib/cartons/range/range-space";

/** The best range found and what no range is below. */
export type BoundedRange = {
  readonly found: FoundRange;
  /** no range costs less, whole 1/10,000 minor units */
  readonly bound: number;
  /** what is known of a range that would be cheaper than the one found */
  readonly settled: Settled;
};

/**
 * A range and a bound without a solver: prices of rows are moved to where the bound is highest, the sizes that they
 * would stock are tried as a range, and sizes are settled on the way. Often nothing stays open, and the range is proven.
 *
 * @param space rows and sizes
 * @param most sizes that may be stocked
 * @param first a range to begin with
 * @param isOver asked before each turn
 * @returns the range, the bound and what is settled; the bound is the cost where the range is proven
 * @see subgradient steps with the length of Polyak (1969), from memory
 * @example assignmentBound(space, 6, interchangedRange(space, 6, new Set()), () => false).bound
 */
export function assignmentBound(
  space: RangeSpace,
  most: number,
  first: FoundRange,
  isOver: () => boolean,
): BoundedRange {
  const grid = priceGrid(space.rows);
  let walk: Walk = {
    prices: space.rows.map((row) => paidBy(row, first.chosen)),
    best: null,
    found: first,
    settled: { kept: new Set(), dropped: new Set() },
    length: FIRST_LENGTH,
    idle: 0,
  };
  for (let turn = 0; turn < MOST_TURNS && walk.length > LEAST_LENGTH; turn++) {
    if (turn > 0 && isOver()) break;
    walk = walked(space, most, walk, grid);
    const end = provenEnd(space, most, walk);
    if (end !== null) return { found: end, bound: end.value, settled: walk.settled };
  }
  // No row costs less than in its cheapest size, whatever few turns have proven.
  const least = space.rows.reduce((sum, { options, unpacked }) => sum + (options[0]?.total ?? unpacked), 0);
  const bound = Math.max(least, Math.ceil(walk.best?.bound ?? 0));
  return { found: walk.found, bound: Math.min(bound, walk.found.value), settled: walk.settled };
}

type Walk = {
  readonly prices: readonly number[];
  /** the prices with the highest bound so far; null before the first turn */
  readonly best: { readonly bound: number; readonly prices: readonly number[] } | null;
  readonly found: FoundRange;
  readonly settled: Settled;
  readonly length: number;
  /** turns without gain */
  readonly idle: number;
};

/** Part of the step that would reach the known cost; halved after so many turns without gain. */
const FIRST_LENGTH = 1.5;
const LEAST_LENGTH = 1e-4;
const PATIENCE = 12;
const MOST_TURNS = 2_000;

function walked(space: RangeSpace, most: number, walk: Walk, grid: number): Walk {
  const priced = pricedRanges(space, walk.prices, most, walk.settled);
  const found = bettered(space, most, walk.found, priced);
  const settled = settledSizes(space, priced, found.value, walk.settled);
  const isGain = walk.best === null || priced.bound > walk.best.bound;
  const best = walk.best === null || isGain ? { bound: priced.bound, prices: walk.prices } : walk.best;
  const idle = isGain ? 0 : walk.idle + 1;
  const kept = { best, found, settled };
  if (idle >= PATIENCE) return { ...kept, prices: best.prices, length: walk.length / 2, idle: 0 };
  const prices = stepped(space, walk, priced, { far: found.value - priced.bound, grid });
  return { ...kept, prices, length: walk.length, idle };
}

function bettered(space: RangeSpace, most: number, found: FoundRange, { picked }: PricedRanges): FoundRange {
  const chosen = new Set(picked);
  const value = spaceValue(space, chosen);
  return value < found.value ? interchangedRange(space, most, chosen) : found;
}

/** Up where no stocked size is cheaper than the price, down where several are. */
function stepped(
  { rows }: RangeSpace,
  { prices, length }: Walk,
  { picked }: PricedRanges,
  { far, grid }: { readonly far: number; readonly grid: number },
): number[] {
  const stocked = new Set(picked);
  const over = rows.map((row, at) => 1 - cheaperStocked(row, prices[at] ?? 0, stocked));
  const norm = over.reduce((sum, each) => sum + each * each, 0);
  const step = norm === 0 ? 0 : (length * Math.max(0, far)) / norm;
  return rows.map(({ unpacked, options }, at) => {
    const moved = Math.round(((prices[at] ?? 0) + step * (over[at] ?? 0)) / grid) * grid;
    return Math.min(unpacked, Math.max(options[0]?.total ?? unpacked, moved));
  });
}

function cheaperStocked({ options }: SpaceRow, price: number, stocked: ReadonlySet<number>): number {
  let count = 0;
  for (const { size, total } of options) {
    if (total >= price) break;
    if (stocked.has(size)) count += 1;
  }
  return count;
}

/** The range if it is known to be the best; null while something is open. */
function provenEnd(space: RangeSpace, most: number, { best, found, settled }: Walk): FoundRange | null {
  if (best !== null && Math.ceil(best.bound) >= found.value) return found;
  const left = space.sizes.filter((size) => !settled.dropped.has(size));
  if (left.length > most && settled.kept.size < most) return null;
  // Only these sizes could be a better range.
  const chosen = left.length > most ? settled.kept : new Set(left);
  const value = spaceValue(space, chosen);
  return value < found.value ? { chosen, value } : found;
}

/** Bits of a double that sums of prices may take; the rest is room for sums over sizes. */
const PRICE_BITS = 44;

/** The power of two that all prices are multiples of. */
function priceGrid(rows: readonly SpaceRow[]): number {
  const sum = rows.reduce((total, { unpacked }) => total + unpacked, 1);
  return 2 ** (Math.ceil(Math.log2(sum)) - PRICE_BITS);
}
