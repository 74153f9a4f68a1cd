import { retention } from "#lib/cartons/keeping/retention";

/** Under so many days of record no figure is given: 13 weeks. */
const LEAST_DAYS = 91;

/** What a keep figure is made from; money in one unit throughout. */
export type KeepQuestion = {
  /** null where never counted */
  readonly onHand: number | null;
  readonly yearlyUse: number;
  readonly watchedDays: number;
  /** price of one today, null where unknown */
  readonly unitCost: number | null;
  /** what one brings when it goes; below zero where that costs money */
  readonly salvage: number;
  readonly orderCost: number;
  /** cartons bought at a time, above zero */
  readonly lot: number;
  /** holding a year as a share of the price, above zero */
  readonly holdingRate: number;
};

/** How many to keep, and the reason; a hint about money, as room and damage decide as well. */
export type KeepFigure =
  | {
      readonly kind: "keep" | "letGo";
      readonly keep: number;
      readonly letGo: number;
      /** null where it is not by the rule of years */
      readonly keepYears: number | null;
      readonly reason: "usedInTime" | "costsNothing" | "moreThanPays" | "notUsed" | "worthMoreGone";
    }
  | {
      readonly kind: "none";
      readonly reason: "countFirst" | "nothingHeld" | "watchedTooShort" | "priceUnknown";
    };

/**
 * How many cartons it pays to keep, in whole cartons.
 *
 * @param question stock, use and money
 * @returns keep all, let some go, or why there is no figure
 * @throws RangeError if the lot or the rate is not above zero, or the order cost below zero
 * @see retention, Tersine and Toelle (1984)
 * @example keepFigure({ ...question, onHand: 3500 }) // keep 2011, let go 1489: more than pays
 */
export function keepFigure(question: KeepQuestion): KeepFigure {
  const { onHand, yearlyUse, watchedDays, unitCost, salvage, orderCost, lot, holdingRate } = question;
  if (onHand === null || onHand < 0) return { kind: "none", reason: "countFirst" };
  if (onHand === 0) return { kind: "none", reason: "nothingHeld" };
  if (watchedDays < LEAST_DAYS) return { kind: "none", reason: "watchedTooShort" };
  if (yearlyUse === 0) return split(onHand, 0, "notUsed", null);
  if (unitCost === null) return { kind: "none", reason: "priceUnknown" };
  if (unitCost <= 0) return split(onHand, salvage > 0 ? 0 : onHand, "worthMoreGone", null);
  const { keep, keepYears } = retention({ yearlyUse, unitCost, salvage, holdingRate, orderCost, lot });
  return split(onHand, Math.floor(keep), salvage >= unitCost ? "worthMoreGone" : "moreThanPays", keepYears);
}

function split(
  onHand: number,
  keep: number,
  whyLetGo: "moreThanPays" | "notUsed" | "worthMoreGone",
  keepYears: number | null,
): KeepFigure {
  if (keep < onHand) return { kind: "letGo", keep, letGo: onHand - keep, keepYears, reason: whyLetGo };
  const reason = keepYears === null ? "costsNothing" : "usedInTime";
  return { kind: "keep", keep: onHand, letGo: 0, keepYears, reason };
}
