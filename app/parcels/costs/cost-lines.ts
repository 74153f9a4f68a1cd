import { costByKind, type KindCost, type TwoCosts } from "#lib/packing/cost-by-kind";
import { type CostTrend, costTrend } from "#lib/packing/cost-change/cost-trend";
import { costValue } from "#lib/units/money";
import type { TypeCosts } from "#prisma/records/type-costs";

/** What packing an item type costs; costs are means of a parcel, 1/10,000 minor unit. */
export type CostLine = {
  readonly itemTypeId: string;
  readonly parcels: number;
  readonly parcelsBefore: number;
  readonly pieces: number;
  /** parcels whose cost in cash is known: the others are not in that mean */
  readonly booked: number;
  readonly mean: TwoCosts;
  /** the dearest first; they add up to the mean */
  readonly kinds: readonly KindCost[];
  readonly trend: CostTrend;
};

const COST_PER_MINOR = 10_000;

/**
 * What packing costs by item type, and whether it costs more than before; the most sent first.
 *
 * @param now parcels of the later span
 * @param before parcels of the earlier span
 * @param prices 1/10,000 minor unit a use unit, by supply
 * @returns item types with a parcel in the later span
 */
export function costLines(
  now: readonly TypeCosts[],
  before: readonly TypeCosts[],
  prices: ReadonlyMap<string, number>,
): readonly CostLine[] {
  const earlier = new Map(before.map((costs) => [costs.itemTypeId, costs]));
  const comparisons = Math.max(1, now.filter(({ itemTypeId }) => earlier.has(itemTypeId)).length);
  return now
    .map((costs): CostLine => {
      const then = earlier.get(costs.itemTypeId);
      const { kinds, mean } = meanCosts(costs, prices);
      return {
        itemTypeId: costs.itemTypeId,
        parcels: costs.parcels,
        parcelsBefore: then?.parcels ?? 0,
        pieces: costs.pieces,
        booked: costs.costs.length,
        mean,
        kinds,
        trend: costTrend(then?.costs ?? [], costs.costs, { comparisons, least: COST_PER_MINOR }),
      };
    })
    .toSorted((a, b) => b.parcels - a.parcels || (a.itemTypeId < b.itemTypeId ? -1 : 1));
}

function meanCosts(costs: TypeCosts, prices: ReadonlyMap<string, number>) {
  const each = (cost: number, parcels: number) => costValue(parcels === 0 ? 0 : Math.round(cost / parcels));
  const { kinds, total } = costByKind(costs.taken, prices);
  const means = kinds
    .map((kind) => ({
      ...kind,
      cash: each(kind.cash, costs.costs.length),
      replacement: each(kind.replacement, costs.parcels),
    }))
    .toSorted((a, b) => b.cash - a.cash || b.replacement - a.replacement);
  const mean = {
    ...total,
    cash: costValue(means.reduce((sum, { cash }) => sum + cash, 0)),
    replacement: costValue(means.reduce((sum, { replacement }) => sum + replacement, 0)),
  };
  return { kinds: means, mean };
}
