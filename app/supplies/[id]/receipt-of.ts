import type { z } from "zod";
import type { ReceiptBody } from "#prisma/records/receipts";
import { rateMillionths } from "../../buying/invoice-form";
import type { receiveForm } from "./receive-form";

/**
 * The receipt that a filled form stands for: one line of one supply.
 *
 * @param supplyId the supply that came in
 * @param read the form as read
 * @returns the receipt to book
 */
export function receiptOf(supplyId: string, read: z.output<ReturnType<typeof receiveForm>>): ReceiptBody {
  const isPaid = read.kind === "paid";
  const purchaseLineId = read.purchaseLineId ?? null;
  const rest = { packs: read.restPacks ?? 0, expectedOn: read.restExpectedOn };
  const restStillComes =
    purchaseLineId === null || rest.packs === 0 || rest.expectedOn === undefined
      ? []
      : [{ purchaseLineId, packs: rest.packs, expectedOn: rest.expectedOn }];
  return {
    id: read.id,
    supplierId: read.supplierId ?? null,
    receivedOn: read.receivedOn,
    kind: read.kind,
    currency: read.currency,
    rateMillionths: rateMillionths(read),
    taxIncluded: !read.taxOnTop,
    deliveryMinor: isPaid ? (read.delivery ?? 0) : 0,
    taxMinor: isPaid ? (read.tax ?? 0) : 0,
    note: read.note,
    lines: [
      {
        id: `${read.id}-1`,
        supplyId,
        purchaseLineId,
        packs: read.packs,
        packAmount: read.packAmount.amount,
        packTyped: `${read.packAmount.typedValue} ${read.packAmount.typedUnit}`.trim(),
        priceMinor: isPaid ? (read.price ?? null) : null,
        moreThanOrdered: read.moreCame,
      },
    ],
    restStillComes,
  };
}
