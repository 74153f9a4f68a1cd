import type { Amount } from "#lib/units/amount";
import { formatEstimate } from "#lib/units/amount-text";
import type { Supply } from "#prisma/records/supplies";
import { onHandWords } from "../supply-rows";

/**
 * The first line of a supply's screen: what is on the shelf and how fast it goes.
 *
 * @param supply the supply
 * @param onHand null where it was never counted
 * @param usePerWeek null where there is no use yet
 * @returns a sentence
 */
export function supplyFinding(supply: Supply, onHand: Amount | null, usePerWeek: Amount | null): string {
  const use =
    usePerWeek === null || usePerWeek <= 0
      ? ""
      : `, about ${formatEstimate(usePerWeek, supply.useUnit)} a week`;
  if (onHand === null) return `${supply.name}: not counted yet${use}.`;
  if (onHand < 0) return `${supply.name}: the book went below zero, count this${use}.`;
  return `${supply.name}: ${onHandWords(onHand, supply)} on hand${use}.`;
}
