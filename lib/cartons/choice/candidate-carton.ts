import type { OfferedCarton } from "#lib/cartons/cost/packed-load";
import type { AgeingClass } from "#lib/cartons/keeping/ageing";
import type { CartonRating } from "#lib/cartons/strength/carton-rating";
import type { BoardCondition } from "#lib/cartons/strength/trusted-board";

/** A carton that a load may go in, as the shelf knows it. */
export type CandidateCarton = OfferedCarton & {
  readonly rating: CartonRating;
  readonly condition: BoardCondition;
  /** cartons; null where never counted. Below zero the count is due: some may be there */
  readonly onHand: number | null;
  /** saved from a delivery, or a single odd one */
  readonly isSaved: boolean;
  /** the seller wants it used up */
  readonly useFirst: boolean;
  readonly ageing: AgeingClass;
};

/** Whether a carton is there to take: counted, not there, or not counted so that only a look can tell. */
export type CartonStock = "onHand" | "countFirst" | "none";

/**
 * Whether a carton is there to take. A size that was never counted, or whose book is below zero, may be there.
 *
 * @param onHand cartons by the book; null where never counted
 * @example cartonStock(0) // "none"
 */
export function cartonStock(onHand: number | null): CartonStock {
  if (onHand === null || onHand < 0) return "countFirst";
  return onHand >= 1 ? "onHand" : "none";
}

/**
 * Whether a carton is one to use up: it sits, or the seller said so. Its price counts as spent then.
 *
 * @param carton class and mark
 */
export function isToUseUp({ ageing, useFirst }: Pick<CandidateCarton, "ageing" | "useFirst">): boolean {
  return useFirst || ageing === "sits";
}
