import type { Settled } from "#lib/cartons/range/assignment-prices";
import type { RangeSpace, SpaceRow } from "#lib/cartons/range/range-space";
import type { LinearModel } from "#lib/optimisation/linear-model";
import { type ModelDraft, modelDraft } from "#lib/optimisation/model-draft";

/** A model of the cheapest range, and how its values and sizes belong together. Its costs are in minor units. */
export type RangeModel = {
  readonly model: LinearModel;
  readonly chosenOf: (values: Readonly<Record<string, number>>) => ReadonlySet<number>;
  readonly valuesOf: (chosen: ReadonlySet<number>) => Readonly<Record<string, number>>;
};

/** Values are in 1/10,000 minor units. */
export const VALUE_PER_MINOR = 10_000;

/**
 * The cheapest range as a model. A row costs at least its cheapest size, and each time that none of its cheapest so
 * many sizes is stocked, what the next one costs more. Rows share such a set of sizes whatever their costs, so that the
 * model has an unknown for each set and not for each row and size; its relaxation is as tight as that with both.
 *
 * @param space rows and sizes
 * @param most sizes that may be stocked
 * @param settled sizes that are stocked, and such that are not
 * @returns the model
 * @see shared sets: Hammer's pseudo-Boolean form of the p-median (1968), from memory
 * @example modelText(rangeModel(space, 6, { kept: new Set(), dropped: new Set() }).model)
 */
export function rangeModel(space: RangeSpace, most: number, settled: Settled): RangeModel {
  const free = space.sizes.filter((size) => !settled.kept.has(size) && !settled.dropped.has(size));
  const { least, missed } = missedSets(space.rows, settled);
  const draft = modelDraft();
  for (const size of free) {
    draft.column({ name: stockedName(size), kind: "whole", lower: 0, upper: 1, cost: 0 });
  }
  draft.column({ name: LEAST, kind: "real", lower: 1, upper: 1, cost: least / VALUE_PER_MINOR });
  const sets = [...missed.values()];
  for (const [at, set] of sets.entries()) addSet(draft, missedName(at), set);
  if (free.length > 0) {
    const stocked = free.map((size) => [1, stockedName(size)] as const);
    draft.row("sizes", Number.NEGATIVE_INFINITY, stocked, most - settled.kept.size);
  }
  return {
    model: draft.model(),
    chosenOf: (values) =>
      new Set([...settled.kept, ...free.filter((size) => (values[stockedName(size)] ?? 0) > 0.5)]),
    valuesOf: (chosen) =>
      Object.fromEntries([
        [LEAST, 1],
        ...free.map((size) => [stockedName(size), Number(chosen.has(size))]),
        ...sets.map(({ sizes }, at) => [missedName(at), Number(!sizes.some((size) => chosen.has(size)))]),
      ]),
  };
}

const LEAST = "least";
const stockedName = (size: number): string => `stocked_${size}`;
const missedName = (at: number): string => `missed_${at}`;

/** Sizes of which one at least is to be stocked, and what it costs where none is. */
type MissedSet = { readonly sizes: readonly number[]; cost: number };

function addSet(draft: ModelDraft, name: string, { sizes, cost }: MissedSet): void {
  draft.column({ name, kind: "real", lower: 0, upper: 1, cost: cost / VALUE_PER_MINOR });
  const terms = sizes.map((size) => [1, stockedName(size)] as const);
  draft.row("missed", 1, [[1, name], ...terms], Number.POSITIVE_INFINITY);
}

function missedSets(
  rows: readonly SpaceRow[],
  settled: Settled,
): { readonly least: number; readonly missed: ReadonlyMap<string, MissedSet> } {
  const missed = new Map<string, MissedSet>();
  let least = 0;
  for (const { unpacked, options } of rows) {
    const open = options.filter(({ size }) => !settled.dropped.has(size));
    least += open[0]?.total ?? unpacked;
    const end = open.findIndex(({ size }) => settled.kept.has(size));
    const before = end < 0 ? open : open.slice(0, end);
    const sizes: number[] = [];
    for (const [at, { size, total }] of before.entries()) {
      sizes.push(size);
      const cost = (open[at + 1]?.total ?? unpacked) - total;
      if (cost === 0) continue;
      const sorted = sizes.toSorted((a, b) => a - b);
      const known = missed.get(sorted.join());
      if (known === undefined) missed.set(sorted.join(), { sizes: sorted, cost });
      else known.cost += cost;
    }
  }
  return { least, missed };
}
