import { invoiceRate } from "#lib/purchasing/invoice-rate";
import type { PricePaid } from "#lib/purchasing/price-move";
import { AMOUNT_PER_UNIT, type Amount, amount } from "#lib/units/amount";
import { day } from "#lib/units/day";
import type { Database } from "../client";
import { shopOf } from "./shop";

/** A price that was paid for a supply, with the receipt that says so. */
export type SupplyPricePaid = PricePaid & {
  readonly supplyId: string;
  readonly supplierName: string | null;
  /** of the receipt */
  readonly lineId: string;
  readonly offerId: string | null;
  readonly packs: number;
  readonly packAmount: Amount;
  readonly packTyped: string;
  /** of one pack, in the money of the receipt, minor units */
  readonly priceMinor: number;
  readonly currency: string;
};

const VALUE_PER_MINOR = 10_000;

/**
 * Prices paid from receipt lines, oldest first, without delivery and added tax. What was taken back in the ledger was
 * not paid.
 *
 * @param of of one supply; of all where it is left out
 */
export async function pricesPaid(
  db: Database,
  of: { readonly supplyId?: string } = {},
): Promise<SupplyPricePaid[]> {
  const shop = await shopOf(db);
  if (shop === null) return [];
  const rows = await db.receiptLine.findMany({
    where: {
      ...of,
      priceMinor: { not: null },
      packs: { gt: 0 },
      packAmount: { gt: 0 },
      receipt: { kind: "paid" },
      movements: { none: { cause: "received", reversedBy: { isNot: null } } },
    },
    orderBy: [{ receipt: { receivedOn: "asc" } }, { receipt: { recordedAt: "asc" } }, { id: "asc" }],
    include: {
      receipt: { include: { supplier: { select: { name: true } } } },
      purchaseLine: { select: { offerId: true } },
    },
  });
  return rows.flatMap(({ receipt, purchaseLine, ...line }) => {
    if (line.priceMinor === null) return [];
    const packAmount = amount(Number(line.packAmount));
    const rate = invoiceRate(receipt, shop);
    const inShop = (line.priceMinor * Number(rate.numerator)) / Number(rate.denominator);
    return {
      on: day(receipt.receivedOn),
      supplierId: receipt.supplierId,
      perUnit: (inShop * VALUE_PER_MINOR * AMOUNT_PER_UNIT) / packAmount,
      supplyId: line.supplyId,
      supplierName: receipt.supplier?.name ?? null,
      lineId: line.id,
      offerId: purchaseLine?.offerId ?? null,
      packs: line.packs,
      packAmount,
      packTyped: line.packTyped,
      priceMinor: line.priceMinor,
      currency: receipt.currency,
    };
  });
}
