import { addDays } from "#lib/units/day";
import type { KeptRateCard, ReadRateCard } from "#prisma/records/rate-cards";
import { overlapProblem } from "./overlap-problem";

/** Whether a card can be kept beside the others, and which of them end for it. */
export type KeptOverlap =
  | { readonly kind: "free"; readonly ended: readonly KeptRateCard[] }
  | { readonly kind: "overlap"; readonly words: string; readonly canEnd: boolean };

/**
 * Looks whether a card claims days of another one of its service. One that began before it and holds on may be ended on the
 * day before.
 *
 * @param card the card to be kept
 * @param others cards that are kept; the card itself may be among them
 * @param isEndWanted whether such a card is to be ended
 */
export function keptOverlap(
  card: KeptRateCard,
  others: readonly ReadRateCard[],
  isEndWanted: boolean,
): KeptOverlap {
  const days = { ...card.card, id: card.id };
  const open = others.find(
    ({ id, service, validFrom, validTo }) =>
      id !== card.id && service === days.service && validTo === null && validFrom < days.validFrom,
  );
  const rest = others.filter(({ id }) => id !== open?.id);
  const words = overlapProblem(days, rest);
  if (words !== null) return { kind: "overlap", words, canEnd: false };
  if (open === undefined) return { kind: "free", ended: [] };
  if (!isEndWanted) {
    return { kind: "overlap", words: overlapProblem(days, [open]) ?? "", canEnd: true };
  }
  const { source, readOn } = open;
  const ended = { id: open.id, source, readOn, card: { ...open.card, validTo: addDays(days.validFrom, -1) } };
  return { kind: "free", ended: [ended] };
}
