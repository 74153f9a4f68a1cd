import { z } from "zod";
import { linePackPrice } from "#lib/purchasing/line-sum";
import type { Day } from "#lib/units/day";
import type { DraftChange } from "#prisma/records/purchase-drafts";
import type { PurchaseLineBody } from "#prisma/records/purchases";
import type { Offer } from "#prisma/records/suppliers";
import { problemsOf } from "../_parts/form-state";
import { moneyTyped, optionalText, wholeNumber } from "../_parts/typed-fields";

const MOST_PACKS = 9_999;
const PACKS = "packs:";

/** A draft as its form says it, or what to mend by field. */
export type DraftReading =
  | { readonly kind: "draft"; readonly change: DraftChange }
  | { readonly kind: "problems"; readonly problems: Record<string, string> };

/** What the form of a draft is read against. */
export type DraftQuestion = {
  readonly purchaseId: string;
  /** what can be ordered of the supplier, and what stands in the draft already */
  readonly offers: readonly Offer[];
  readonly minorDigits: number;
  /** when the lines would come if they were placed today */
  readonly expectedOn: Day;
};

/**
 * Reads the form of a draft: `packs:<offer>` for each offer, the expected delivery and a note.
 *
 * @param typed the fields by name, as sent
 * @param question what it is read against
 * @returns the lines at the prices of their offers, or what to mend
 */
export function readDraftForm(
  typed: Readonly<Record<string, string>>,
  question: DraftQuestion,
): DraftReading {
  const head = z
    .object({ delivery: moneyTyped(question.minorDigits).optional(), note: optionalText })
    .safeParse(typed);
  const problems: Record<string, string> = head.success ? {} : problemsOf(head.error);
  const lines: PurchaseLineBody[] = [];
  for (const offer of question.offers) {
    const packs = wholeNumber(0, MOST_PACKS).safeParse(typed[`${PACKS}${offer.id}`] ?? "0");
    if (!packs.success) problems[`${PACKS}${offer.id}`] = packs.error.issues[0]?.message ?? "";
    else if (packs.data > 0) lines.push(draftLine(offer, packs.data, question));
  }
  if (!head.success || Object.keys(problems).length > 0) return { kind: "problems", problems };
  const { delivery = null, note } = head.data;
  return { kind: "draft", change: { deliveryMinor: delivery, note, lines } };
}

/**
 * A line of a draft at the price of its offer.
 *
 * @param offer the offer as it stands
 * @param packs whole packs from 1
 * @param draft its order, and when it would come
 * @returns the line to write
 */
export function draftLine(
  offer: Offer,
  packs: number,
  draft: Pick<DraftQuestion, "purchaseId" | "expectedOn">,
): PurchaseLineBody {
  return {
    id: `${draft.purchaseId}-${offer.id}`,
    supplyId: offer.supplyId,
    offerId: offer.id,
    packs,
    packAmount: offer.packAmount,
    priceMinor: linePackPrice(offer, packs),
    expectedOn: draft.expectedOn,
  };
}
