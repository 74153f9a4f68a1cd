import { cheapestWay } from "#lib/cushioning/parcel-kind";
import type { WayCost } from "#lib/cushioning/way-cost";
import type { CushionStyle } from "#lib/packing/recipe-version";

/** Parcels that were sent alike: the same pieces in the same style to the same zone. */
export type SentKind = {
  readonly parcels: number;
  readonly style: CushionStyle;
  /** null where it was not noted */
  readonly zone: string | null;
  /** what each way to pack one costs */
  readonly costs: readonly WayCost[];
};

/** What parcels that were sent would cost, all reckoned by the same prices and cards; minor units, not rounded. */
export type PastCost = {
  readonly parcels: number;
  readonly asPackedMinor: number;
  /** all in one style; a kind without a recipe in it stays as it was packed */
  readonly allMinor: ReadonlyMap<CushionStyle, number>;
  /** each parcel in its cheapest way */
  readonly bestMinor: number;
  /** parcels that the cheapest way would have packed in another style */
  readonly otherStyle: number;
  /** parcels left out: no recipe in the style in which they were packed, so nothing to reckon them by */
  readonly leftOut: number;
};

/**
 * What past parcels would have cost on all paper, on all bubble, as they were packed, and each in its cheapest way. A
 * parcel's own zone counts where it was noted.
 *
 * @param kinds sent alike
 * @param styles to reckon all in
 */
export function pastCost(kinds: readonly SentKind[], styles: readonly CushionStyle[]): PastCost {
  const all = new Map<CushionStyle, number>(styles.map((style) => [style, 0]));
  const sum = { parcels: 0, asPackedMinor: 0, bestMinor: 0, otherStyle: 0, leftOut: 0 };
  for (const { parcels, style, zone, costs } of kinds) {
    const own = costs.map((cost) => ({ ...cost, totalMinor: totalTo(zone, cost) }));
    const packed = own.find(({ way }) => way.style === style);
    const best = cheapestWay(own);
    if (packed === undefined || best === null) {
      sum.leftOut += parcels;
      continue;
    }
    sum.parcels += parcels;
    sum.asPackedMinor += parcels * packed.totalMinor;
    sum.bestMinor += parcels * best.totalMinor;
    if (best.totalMinor < packed.totalMinor) sum.otherStyle += parcels;
    for (const each of styles) {
      const taken = own.find(({ way }) => way.style === each) ?? packed;
      all.set(each, (all.get(each) ?? 0) + parcels * taken.totalMinor);
    }
  }
  return { ...sum, allMinor: all };
}

/** The total with the postage of its own zone in place of the mean over the shop's zones. */
function totalTo(zone: string | null, cost: WayCost): number {
  const { totalMinor, postage, postageMinor, postagesPaid } = cost;
  const own = zone === null ? undefined : postage?.zones.find((each) => each.zone === zone);
  if (own?.minor == null || postageMinor === null) return totalMinor;
  return totalMinor + postagesPaid * (own.minor - postageMinor);
}
