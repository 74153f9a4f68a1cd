import { type RangeSpace, type SpaceRow, spaceValue } from "#lib/cartons/range/range-space";

/** Sizes and what they cost in whole 1/10,000 minor units. */
export type FoundRange = { readonly chosen: ReadonlySet<number>; readonly value: number };

/**
 * A good range at once: sizes are added where they save most, then one is exchanged for another for as long as that
 * saves anything. Often the best, never proven so by itself.
 *
 * @param space rows and sizes
 * @param most sizes that may be stocked
 * @param first sizes to begin with, at most so many
 * @returns the range; with fewer sizes where more save nothing
 * @see interchange: Teitz and Bart (1968), from memory
 * @example interchangedRange(space, 6, new Set()).value
 */
export function interchangedRange(space: RangeSpace, most: number, first: ReadonlySet<number>): FoundRange {
  let found: FoundRange = { chosen: first, value: spaceValue(space, first) };
  for (;;) {
    const better =
      found.chosen.size < most
        ? (bestAddition(space, found) ?? bestExchange(space, found))
        : bestExchange(space, found);
    if (better === null) return found;
    found = better;
  }
}

/** What each addition saves, what each removal costs, and what an addition takes off that cost. */
type Gains = {
  readonly saved: Map<number, number>;
  readonly lost: Map<number, number>;
  readonly relieved: Map<number, Map<number, number>>;
};

function bestAddition(space: RangeSpace, { chosen, value }: FoundRange): FoundRange | null {
  const { saved } = gainsOf(space, chosen);
  const [best] = [...saved].toSorted(([, a], [, b]) => b - a);
  return best === undefined ? null : { chosen: new Set([...chosen, best[0]]), value: value - best[1] };
}

function bestExchange(space: RangeSpace, { chosen, value }: FoundRange): FoundRange | null {
  const { saved, lost, relieved } = gainsOf(space, chosen);
  let best: FoundRange | null = null;
  for (const coming of space.sizes) {
    if (chosen.has(coming)) continue;
    for (const going of chosen) {
      const back = relieved.get(coming)?.get(going) ?? 0;
      const changed = value - (saved.get(coming) ?? 0) + (lost.get(going) ?? 0) - back;
      if (changed >= (best?.value ?? value)) continue;
      best = { chosen: new Set([...[...chosen].filter((size) => size !== going), coming]), value: changed };
    }
  }
  return best;
}

function gainsOf({ rows }: RangeSpace, chosen: ReadonlySet<number>): Gains {
  const gains: Gains = { saved: new Map(), lost: new Map(), relieved: new Map() };
  for (const row of rows) addGains(gains, row, chosen);
  return gains;
}

/** A row goes from its cheapest stocked size to a cheaper one that comes, or to its next one where that goes. */
function addGains({ saved, lost, relieved }: Gains, row: SpaceRow, chosen: ReadonlySet<number>): void {
  const now = row.options.find(({ size }) => chosen.has(size));
  const total = now?.total ?? row.unpacked;
  const next = row.options.find(({ size }) => chosen.has(size) && size !== now?.size)?.total ?? row.unpacked;
  if (now !== undefined) added(lost, now.size, next - total);
  for (const option of row.options) {
    if (option.total >= next) break;
    if (chosen.has(option.size)) continue;
    if (option.total < total) added(saved, option.size, total - option.total);
    if (now === undefined) continue;
    const ofSize = relieved.get(option.size) ?? new Map<number, number>();
    added(ofSize, now.size, next - Math.max(total, option.total));
    relieved.set(option.size, ofSize);
  }
}

function added(to: Map<number, number>, size: number, value: number): void {
  to.set(size, (to.get(size) ?? 0) + value);
}
