import { type PackedPeriod, type PackedStyle, parcelsIn } from "#lib/packing/cost-change/packed-period";
import { shapleySplit } from "#lib/statistics/shapley-split";

/**
 * Why a parcel's material costs more or less: prices; the card; cartons chosen; shares of the styles; pieces in a parcel;
 * the rest, which is what was used otherwise than the card says.
 */
export type CostCause = "price" | "card" | "carton" | "style" | "pieces" | "rest";

export const COST_CAUSES: readonly CostCause[] = ["price", "card", "carton", "style", "pieces", "rest"];

/** What a cause adds to the mean cost of a parcel through one supply, 1/10,000 minor unit. */
export type CostPart = { readonly cause: CostCause; readonly supplyId: string; readonly cost: number };

/** Mean material cost of a parcel in two periods, 1/10,000 minor unit; the parts add up to the difference. */
export type CostChange = {
  readonly before: number;
  readonly now: number;
  readonly parts: readonly CostPart[];
};

/**
 * What changed the mean material cost of an item type's parcels. The cost of a supply is its price × Σ over styles of
 * share × what a parcel takes; that is the card's amounts for the pieces in it and what was used otherwise, or the
 * cartons chosen. Each of the six causes gets the mean of what it adds over all orders in which they may change. What
 * only one period knows (the price of a supply, the card of a style) counts as the same in the other.
 *
 * @param before - the earlier period, with a parcel
 * @param now - the later period, with a parcel
 * @param cartons - which supplies are cartons
 * @returns both means and the parts that are not zero
 * @throws RangeError if a period has no parcel
 * @see Shapley (1953) for the split; which causes there are is this program's own choice
 * @example costChange(may, november, new Set(["cube-8"])).parts[0] // { cause: "price", supplyId: "paper", cost: 9000 }
 */
export function costChange(
  before: PackedPeriod,
  now: PackedPeriod,
  cartons: ReadonlySet<string>,
): CostChange {
  if (parcelsIn(before) === 0 || parcelsIn(now) === 0) {
    throw new RangeError("costChange requires a parcel in both periods, got none in one of them");
  }
  const periods = [before, now].map((period, index) => meansOf(period, index === 0 ? now : before));
  const supplies = new Set(
    [before, now].flatMap((period) => period.styles.flatMap(({ took }) => [...took.keys()])),
  );
  const styles = new Set([before, now].flatMap((period) => period.styles.map(({ style }) => style)));
  const costOf = (supplyId: string, changed: number): number => {
    const from = (cause: CostCause): Means | undefined =>
      periods[(changed & (1 << COST_CAUSES.indexOf(cause))) === 0 ? 0 : 1];
    const price = from("price")?.price(supplyId) ?? 0;
    const isCarton = cartons.has(supplyId);
    return [...styles].reduce((sum, style) => {
      const share = from("style")?.share(style) ?? 0;
      const amount = isCarton
        ? (from("carton")?.took(style, supplyId) ?? 0)
        : (from("card")?.card(style, supplyId, from("pieces")?.pieces(style) ?? 0) ?? 0) +
          (from("rest")?.otherwise(style, supplyId) ?? 0);
      return sum + share * price * amount;
    }, 0);
  };
  const all = 2 ** COST_CAUSES.length - 1;
  const total = (changed: number): number =>
    [...supplies].reduce((sum, supplyId) => sum + costOf(supplyId, changed), 0);
  const parts = [...supplies].flatMap((supplyId) => {
    const split = shapleySplit(COST_CAUSES.length, (changed) => costOf(supplyId, changed));
    return COST_CAUSES.map((cause, index): CostPart => ({ cause, supplyId, cost: split[index] ?? 0 }));
  });
  return { before: total(0), now: total(all), parts: parts.filter(({ cost }) => cost !== 0) };
}

/** A period's means; where it knows nothing, those of the other one. */
type Means = {
  readonly price: (supplyId: string) => number;
  readonly share: (style: string) => number;
  readonly pieces: (style: string) => number;
  readonly card: (style: string, supplyId: string, pieces: number) => number;
  readonly took: (style: string, supplyId: string) => number;
  readonly otherwise: (style: string, supplyId: string) => number;
};

function meansOf(own: PackedPeriod, other: PackedPeriod): Means {
  const parcels = parcelsIn(own);
  const named = (period: PackedPeriod, style: string): PackedStyle | undefined =>
    period.styles.find((each) => each.style === style);
  const known = (style: string): PackedStyle | undefined => named(own, style) ?? named(other, style);
  const pieces = (style: string): number => meanPieces(known(style));
  const card = (style: string, supplyId: string, count: number): number =>
    cardAmount(known(style), supplyId, count);
  const took = (style: string, supplyId: string): number => meanTook(known(style), supplyId);
  return {
    price: (supplyId) => own.unitCosts.get(supplyId) ?? other.unitCosts.get(supplyId) ?? 0,
    share: (style) => (named(own, style)?.parcels ?? 0) / parcels,
    pieces,
    card,
    took,
    otherwise: (style, supplyId) => took(style, supplyId) - card(style, supplyId, pieces(style)),
  };
}

function meanPieces(style: PackedStyle | undefined): number {
  return style === undefined ? 0 : style.pieces / style.parcels;
}

function cardAmount(style: PackedStyle | undefined, supplyId: string, pieces: number): number {
  const { perPiece, perParcel } = style?.card ?? {};
  return (perPiece?.get(supplyId) ?? 0) * pieces + (perParcel?.get(supplyId) ?? 0);
}

function meanTook(style: PackedStyle | undefined, supplyId: string): number {
  return style === undefined ? 0 : (style.took.get(supplyId) ?? 0) / style.parcels;
}
