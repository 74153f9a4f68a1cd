import type { WayCost, WayTerms } from "#lib/cushioning/way-cost";
import { wayCost } from "#lib/cushioning/way-cost";
import type { WayToPack } from "#lib/cushioning/way-to-pack";
import type { CushionStyle } from "#lib/packing/recipe-version";
import type { PackedWeight } from "#lib/packing/weight/packed-weight";

/** What all ways cost for a piece of one weight. */
export type WeightPoint = {
  /** the bare pieces of the parcel, milligrams */
  readonly bareMg: number;
  /** minor units by style */
  readonly totals: ReadonlyMap<CushionStyle, number>;
};

/** A bare weight at which another way becomes the cheapest. */
export type WeightTurn = { readonly bareMg: number; readonly from: CushionStyle; readonly to: CushionStyle };

/** Cost over bare weight, the saw-tooth of the postage steps, and where the choice turns. */
export type CostOverWeight = {
  readonly points: readonly WeightPoint[];
  readonly turns: readonly WeightTurn[];
};

/** What it is reckoned for. */
export type WeightRange = {
  /** milligrams of bare pieces, from above 0 */
  readonly fromMg: number;
  readonly toMg: number;
  /** points to draw, at least two */
  readonly points: number;
};

/** A turn is found to a tenth of a gram. */
const NEAR_MG = 100;

/**
 * What each way to pack costs for heavier and lighter pieces, all else alike: materials stay, the weight moves through the
 * steps of the rate card. Between two points the cheapest way may turn; where is found by halving.
 *
 * @param ways of one parcel
 * @param terms prices, rate card and zones
 * @param range bare weights
 * @param weightAt what a parcel packed in a way may weigh with such bare pieces
 * @param valueMinor what is in the parcel sells for
 * @returns points from light to heavy, and each turn; a turn and back within one gap between points is not seen
 * @throws RangeError if the range is empty or has fewer than two points
 */
export function costOverWeight(
  ways: readonly WayToPack[],
  terms: WayTerms,
  range: WeightRange,
  weightAt: (way: WayToPack, bareMg: number) => PackedWeight,
  valueMinor: number | null,
): CostOverWeight {
  const { fromMg, toMg, points: count } = range;
  if (!(fromMg > 0 && toMg > fromMg && count >= 2)) {
    throw new RangeError(
      `costOverWeight requires a range and two points, got ${fromMg} to ${toMg} in ${count}`,
    );
  }
  const pointAt = (bareMg: number): WeightPoint => ({
    bareMg,
    totals: new Map(
      ways.map((way) => {
        const cost: WayCost = wayCost({ ...way, weight: weightAt(way, bareMg) }, terms, valueMinor);
        return [way.style, cost.totalMinor];
      }),
    ),
  });
  const points = Array.from({ length: count }, (_, at) =>
    pointAt(fromMg + ((toMg - fromMg) * at) / (count - 1)),
  );
  const turns = points.flatMap((point, at) => {
    const before = points[at - 1];
    return before === undefined ? [] : turnsBetween(before, point, pointAt);
  });
  return { points, turns };
}

/** The one turn between two points with different cheapest ways, or those on either side of a third way between them. */
function turnsBetween(
  low: WeightPoint,
  high: WeightPoint,
  pointAt: (bareMg: number) => WeightPoint,
): WeightTurn[] {
  const [from, to] = [cheapestOf(low), cheapestOf(high)];
  if (from === null || to === null || from === to) return [];
  if (high.bareMg - low.bareMg < NEAR_MG) return [{ bareMg: high.bareMg, from, to }];
  const middle = pointAt((low.bareMg + high.bareMg) / 2);
  return [...turnsBetween(low, middle, pointAt), ...turnsBetween(middle, high, pointAt)];
}

function cheapestOf({ totals }: WeightPoint): CushionStyle | null {
  const [first] = [...totals].toSorted(([, a], [, b]) => a - b);
  return first?.[0] ?? null;
}
