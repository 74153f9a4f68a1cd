import { type CostOverWeight, costOverWeight } from "#lib/cushioning/cost-over-weight";
import type { WayTerms } from "#lib/cushioning/way-cost";
import type { PackedPieces } from "#lib/cushioning/way-to-pack";
import { leadingItemType } from "#lib/packing/leading-item-type";
import { packedWeight } from "#lib/packing/weight/packed-weight";
import { type CushionAnswer, type KindAnswer, kindAnswer, piecesKey, piecesValue } from "../cushion-answer";
import type { CushionGround } from "../cushion-ground";

/** One kind of parcel with all that is said of it. */
export type KindDetail = {
  readonly kind: KindAnswer;
  /** null where the piece or a supply was never weighed, or no card holds */
  readonly overWeight: CostOverWeight | null;
  /** bare pieces of the parcel as they are, milligrams; null where they were never weighed */
  readonly bareMg: number | null;
};

/** Points of the picture: a step is seen from one to the next. */
const POINTS = 73;
/** The picture reaches from a third of the pieces' weight to twice it, and at least so far to both sides. */
const LEAST_SPAN_MG = 700_000;
const LEAST_SHARE = 1 / 3;
const MOST_TIMES = 2;

/**
 * One kind of parcel, also over lighter and heavier pieces.
 *
 * @param pieces of the parcel
 * @param ground as the shop stands
 * @param answer the comparison with its prices and card
 */
export function kindDetail(
  pieces: PackedPieces,
  ground: CushionGround,
  { terms, kinds }: Pick<CushionAnswer, "terms" | "kinds">,
): KindDetail {
  const key = piecesKey(pieces);
  const kind = kinds.find((each) => piecesKey(each.pieces) === key) ?? kindAnswer(pieces, ground, terms);
  const bareMg = kind.costs[0]?.way.contentsMg ?? 0;
  const isWeighed = kind.costs.length > 0 && kind.costs.every(({ way }) => way.weight !== null);
  return {
    kind,
    bareMg: isWeighed ? bareMg : null,
    overWeight: isWeighed && terms.card !== null ? overWeights(kind, ground, terms, bareMg) : null,
  };
}

function overWeights(
  { pieces, costs }: KindAnswer,
  ground: CushionGround,
  terms: WayTerms,
  bareMg: number,
): CostOverWeight {
  const itemTypeId = leadingItemType(pieces);
  const range = {
    fromMg: Math.max(10_000, Math.min(bareMg * LEAST_SHARE, bareMg - LEAST_SPAN_MG)),
    toMg: Math.max(bareMg * MOST_TIMES, bareMg + LEAST_SPAN_MG),
    points: POINTS,
  };
  return costOverWeight(
    costs.map(({ way }) => way),
    terms,
    range,
    ({ style, cartons, packingMg }, bare) =>
      packedWeight(ground.packing.weights, {
        itemTypeId,
        cartonId: cartons[0] ?? null,
        style,
        predictedMg: bare + packingMg,
      }),
    piecesValue(pieces, ground),
  );
}
