import { invoiceRate } from "#lib/purchasing/invoice-rate";
import { nearestInteger } from "#lib/units/nearest-integer";
import type { Database } from "../client";
import { shopOf } from "./shop";

/** What was spent with a supplier in a month, in the shop's currency. */
export type MonthSpend = {
  /** "2026-11" */
  readonly month: string;
  /** null where the receipt names no supplier */
  readonly supplierId: string | null;
  readonly supplierName: string | null;
  /** goods, delivery and added tax, minor units */
  readonly minor: number;
  readonly receipts: number;
  /** lines of paid receipts whose price is not known: what they cost is not in the sum */
  readonly withoutPrice: number;
};

/**
 * Money spent on supplies by month and supplier, the latest month first: what the paid receipts say, each rounded
 * once to the shop's minor unit.
 *
 * @param from first day, YYYY-MM-DD
 */
export async function spendingFrom(db: Database, from: string): Promise<MonthSpend[]> {
  const shop = await shopOf(db);
  if (shop === null) return [];
  const rows = await db.receipt.findMany({
    where: { kind: "paid", receivedOn: { gte: from } },
    orderBy: [{ receivedOn: "desc" }, { id: "asc" }],
    include: {
      supplier: { select: { name: true } },
      lines: {
        select: { packs: true, priceMinor: true },
        where: { movements: { none: { cause: "received", reversedBy: { isNot: null } } } },
      },
    },
  });
  const sums = new Map<string, MonthSpend>();
  for (const { lines, supplier, ...receipt } of rows) {
    if (lines.length === 0) continue;
    const month = receipt.receivedOn.slice(0, 7);
    const key = `${month} ${receipt.supplierId}`;
    const before = sums.get(key);
    const goods = lines.reduce((sum, line) => sum + line.packs * (line.priceMinor ?? 0), 0);
    const invoice = goods + receipt.deliveryMinor + (receipt.taxIncluded ? 0 : receipt.taxMinor);
    const rate = invoiceRate(receipt, shop);
    sums.set(key, {
      month,
      supplierId: receipt.supplierId,
      supplierName: supplier?.name ?? null,
      minor: (before?.minor ?? 0) + nearestInteger(BigInt(invoice) * rate.numerator, rate.denominator),
      receipts: (before?.receipts ?? 0) + 1,
      withoutPrice: (before?.withoutPrice ?? 0) + lines.filter((line) => line.priceMinor === null).length,
    });
  }
  return [...sums.values()];
}
