/** What the shop has decided about its buying. */
export type BuyingTerms = {
  /** what is promised: a share of order cycles without running out, or a share of the need filled from stock */
  readonly goal: Goal;
  /** nothing is bought that would last longer */
  readonly longestCoverWeeks: number;
  /** what a year of keeping stock costs, per thousand of its value */
  readonly holdingPerMille: number;
  /** what the seller counts for placing and putting away one order, minor units */
  readonly orderCostMinor: number;
  /** most to spend on the orders of one week, minor units; null for no limit */
  readonly weekLimitMinor: number | null;
  /** room for supplies, millilitres; null for no limit */
  readonly roomMl: number | null;
  readonly roomTyped: string | null;
};

/** A promise: how often stock runs out, or how much of the need it fills. */
export type Goal = "cycles" | "share";

/**
 * Reads a goal as stored.
 *
 * @param text the column
 * @example goalOf("share") // "share"
 */
export function goalOf(text: string): Goal {
  return text === "share" ? "share" : "cycles";
}
