import { holdsOn } from "#lib/postage/card-on";
import type { Day } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import type { KeptRateCard } from "#prisma/records/rate-cards";

/**
 * What the screen found about the shop's postage.
 *
 * @param cards rate cards in use
 * @param today the shop's day
 * @returns one sentence
 */
export function postageFinding(cards: readonly KeptRateCard[], today: Day): string {
  if (cards.length === 0)
    return "No prices yet: paste your carrier's table to see which weight band to promise.";
  const holding = cards.filter((card) => holdsOn(card, today));
  if (holding.length === 0) return "No rate card holds today: add the one that does.";
  const [ending] = holding.flatMap(({ service, validTo }) =>
    validTo === null ? [] : [{ service, validTo }],
  );
  const count =
    holding.length === 1
      ? `The prices of ${holding[0]?.service} hold today`
      : `${holding.length} rate cards hold today`;
  return ending === undefined
    ? `${count}.`
    : `${count}; ${holding.length === 1 ? "they end" : `${ending.service} ends`} on ${formatDay(ending.validTo, { year: true })}.`;
}
