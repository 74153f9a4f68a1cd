import type { PurchasePlan } from "#lib/purchasing/plan/purchase-plan";
import type { CheckRow } from "#lib/replenishment/weekly-check";
import { type Day, maxDay } from "#lib/units/day";
import type { Offer, Supplier } from "#prisma/records/suppliers";
import type { DraftLine, PurchaseDraft } from "../this-week/purchase-draft";
import { type ReasonWordsFrame, reasonWords } from "./reason-words";

/** What this week's orders are made from. */
export type PlanDraftsFrame = Omit<ReasonWordsFrame, "row"> & {
  readonly rows: readonly CheckRow[];
  readonly offers: readonly Offer[];
  readonly suppliers: readonly Supplier[];
  /** the orders as each supply alone would have them; what the plan does not know of is taken from here */
  readonly alone: readonly PurchaseDraft[];
  /** when an order of an offer placed today is here */
  readonly arrivalOf: (offerId: string) => Day;
};

/**
 * This week's orders by the plan: its packs with the reasons, then what the plan leaves for later with no packs, and
 * what it cannot reckon with (no price) as each supply alone would have it.
 *
 * @param plan the plan
 * @param frame rows, offers, suppliers, and the orders without a plan
 * @returns a draft for each supplier that is to get an order
 */
export function planDrafts(plan: PurchasePlan, frame: PlanDraftsFrame): PurchaseDraft[] {
  const { suppliers, alone } = frame;
  const planned = new Set(plan.stock.map(({ supplyId }) => supplyId));
  const drafts = suppliers.flatMap((supplier): PurchaseDraft[] => {
    const order = plan.orders.find(({ week, supplierId }) => week === 0 && supplierId === supplier.id);
    const own = (order?.lines ?? []).flatMap(({ offerId, packs }) =>
      planLine(plan, { offerId, packs }, frame),
    );
    const others = alone
      .filter((draft) => draft.supplierId === supplier.id)
      .flatMap((draft) => draft.lines)
      .filter((line) => own.every(({ supplyId }) => supplyId !== line.supplyId))
      .map((line) => (planned.has(line.supplyId) ? { ...line, packs: 0, isUrgent: false } : line));
    const lines = [...own, ...others];
    const chosen = lines.filter((line) => line.packs > 0);
    const [first] = chosen;
    if (first === undefined) return [];
    const { id, name, deliveryMinor, freeDeliveryMinor } = supplier;
    return [
      {
        supplierId: id,
        supplierName: name,
        deliveryMinor,
        freeDeliveryMinor,
        expectedOn: chosen.reduce((last, line) => maxDay(last, line.expectedOn), first.expectedOn),
        lines,
      },
    ];
  });
  const urgency = (draft: PurchaseDraft) =>
    frame.rows.findIndex((row) =>
      draft.lines.some((line) => line.packs > 0 && line.supplyId === row.supplyId),
    );
  return drafts.toSorted((a, b) => urgency(a) - urgency(b));
}

function planLine(
  plan: PurchasePlan,
  { offerId, packs }: { readonly offerId: string; readonly packs: number },
  frame: PlanDraftsFrame,
): DraftLine[] {
  const offer = frame.offers.find(({ id }) => id === offerId);
  if (offer === undefined) return [];
  const row = frame.rows.find(({ supplyId }) => supplyId === offer.supplyId);
  const reasons = plan.reasons.find((each) => each.offerId === offerId)?.reasons ?? [];
  return [
    {
      supplyId: offer.supplyId,
      supply: frame.nameOf(offer.supplyId),
      offerId,
      pack: offer.pack,
      packAmount: offer.packAmount,
      prices: { priceMinor: offer.priceMinor, breaks: offer.breaks, breakKind: offer.breakKind },
      packs,
      suggestedPacks: packs,
      isUrgent: true,
      orderByDate: row?.orderByDate ?? null,
      expectedOn: frame.arrivalOf(offerId),
      why: reasonWords(reasons, { ...frame, row }),
    },
  ];
}
