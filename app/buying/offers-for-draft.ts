import type { PurchaseOrder } from "#prisma/records/purchase-orders";
import type { Offer } from "#prisma/records/suppliers";

/**
 * What a draft can hold: what its supplier offers now, and what stands in it although its offer was withdrawn since.
 *
 * @param order the draft
 * @param offers in use
 * @returns offers, those in use first
 */
export function offersForDraft(order: PurchaseOrder, offers: readonly Offer[]): Offer[] {
  const inUse = offers.filter((offer) => offer.supplierId === order.supplierId);
  const withdrawn = order.lines.flatMap((line): Offer[] => {
    if (line.offerId === null || inUse.some((offer) => offer.id === line.offerId)) return [];
    return [
      {
        id: line.offerId,
        supplyId: line.supplyId,
        supplierId: order.supplierId,
        pack: `${line.pack ?? "pack"} (withdrawn)`,
        packAmount: line.packAmount,
        packTyped: "",
        priceMinor: line.priceMinor,
        breakKind: "all-units",
        volumeMl: null,
        volumeTyped: null,
        soldOut: false,
        mostPacksAMonth: null,
        retired: true,
        breaks: [],
      },
    ];
  });
  return [...inUse, ...withdrawn];
}
