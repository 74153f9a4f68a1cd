import type { AgeingClass } from "#lib/cartons/keeping/ageing";
import { formatDay } from "#lib/units/day-text";
import type { ShelfCarton } from "./shelf-carton";

/** How a size of carton is called by how it moves. */
export const AGEING_WORDS: Readonly<Record<AgeingClass, string>> = {
  moves: "moves",
  slow: "slow",
  sits: "sits",
  tooNew: "new",
};

/**
 * When a carton was last used, and how long what is there lasts.
 *
 * @param carton a carton of the shelf
 * @returns words without a full stop: "last used 3 Mar; 12 on hand last 14 months"
 */
export function movingWords({ onHand, idle }: Pick<ShelfCarton, "onHand" | "idle">): string {
  const { use, monthsOfCover } = idle;
  const last = use.lastUsed === null ? "not used in a year" : `last used ${formatDay(use.lastUsed)}`;
  if (onHand === null) return `${last}; never counted`;
  const count = onHand < 0 ? "the book is below zero: count" : `${onHand} on hand`;
  if (monthsOfCover === null || onHand <= 0) return `${last}; ${count}`;
  return `${last}; ${count}, enough for ${monthsWords(monthsOfCover)}`;
}

const WEEKS_A_MONTH = 52 / 12;
/** Beyond this a number says no more than that it is long. */
const MOST_MONTHS = 60;

/**
 * A span of months as one says it.
 *
 * @param months from zero
 * @returns "3 weeks", "14 months", "over 5 years"
 */
export function monthsWords(months: number): string {
  if (months > MOST_MONTHS) return "over 5 years";
  if (months >= 2) return `${Math.round(months)} months`;
  const weeks = Math.round(months * WEEKS_A_MONTH);
  return weeks === 1 ? "a week" : `${weeks} weeks`;
}
