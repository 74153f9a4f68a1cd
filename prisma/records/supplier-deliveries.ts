import type { DeliveryTerms } from "#lib/replenishment/lead-time/delivery-terms";
import { latenessBelief } from "#lib/replenishment/lead-time/lateness-belief";
import { type Lateness, latenesses, type PastDelivery } from "#lib/replenishment/lead-time/past-delivery";
import type { SupplierDelivery } from "#lib/replenishment/lead-time/supplier-delivery";
import { addDays, type Day, day } from "#lib/units/day";
import type { Database } from "../client";
import { deliveryTermsOf } from "./delivery-terms";

/** How a supplier delivers: its terms, how late it was, and how late the next order may be. */
export type DeliveryRecord = SupplierDelivery & { readonly late: readonly Lateness[] };

/** Orders that are looked at, the latest first; older ones hardly count. */
const ORDERS = 300;

/**
 * How each supplier in use delivers, by the orders and receipts up to a day.
 *
 * @param db the database
 * @param today the day of the next order; what came later is not looked at
 * @returns by supplier
 */
export async function supplierDeliveries(db: Database, today: Day): Promise<Map<string, DeliveryRecord>> {
  const [suppliers, purchases] = await Promise.all([
    db.supplier.findMany({ where: { retired: false }, include: { closures: true } }),
    db.purchase.findMany({
      where: { state: "placed", placedOn: { lte: today } },
      orderBy: { placedOn: "desc" },
      take: ORDERS,
      select: {
        supplierId: true,
        placedOn: true,
        placedAt: true,
        lines: {
          select: {
            supplyId: true,
            packs: true,
            closedAs: true,
            closedOn: true,
            receiptLines: { select: { packs: true, receipt: { select: { receivedOn: true } } } },
          },
        },
      },
    }),
  ]);
  return new Map(
    suppliers.map((supplier) => {
      const terms = deliveryTermsOf(supplier, supplier.closures);
      const own = purchases.filter((purchase) => purchase.supplierId === supplier.id);
      const past = own.flatMap((purchase) => deliveriesOf(purchase, { cutOff: supplier.cutOff, today }));
      return [supplier.id, recordOf(past, terms, today)];
    }),
  );
}

function recordOf(past: readonly PastDelivery[], terms: DeliveryTerms, today: Day): DeliveryRecord {
  const late = latenesses(past, terms, today);
  return {
    terms,
    late,
    belief: latenessBelief(late, { promisedDays: terms.promisedDays, orderedOn: today }),
  };
}

type PurchaseRow = {
  readonly placedOn: string;
  readonly placedAt: string | null;
  readonly lines: readonly {
    readonly supplyId: string;
    readonly packs: number;
    readonly closedAs: string | null;
    readonly closedOn: string | null;
    readonly receiptLines: readonly {
      readonly packs: number;
      readonly receipt: { readonly receivedOn: string };
    }[];
  }[];
};

/** An order counts once: each of its supplies the same, each part of a supply by its packs. */
function deliveriesOf(
  purchase: PurchaseRow,
  { cutOff, today }: { readonly cutOff: string | null; readonly today: Day },
): PastDelivery[] {
  const { placedAt } = purchase;
  const isLateInTheDay = cutOff !== null && placedAt !== null && placedAt > cutOff;
  const orderedOn = addDays(day(purchase.placedOn), isLateInTheDay ? 1 : 0);
  const supplies = [...new Set(purchase.lines.map((line) => line.supplyId))]
    .map((supplyId) => purchase.lines.filter((line) => line.supplyId === supplyId))
    .map((lines) => lines.flatMap((line) => partsOf(line, today)))
    .filter((parts) => parts.length > 0);
  const shares = new Map<Day | null, number>();
  for (const parts of supplies) {
    const packs = parts.reduce((sum, part) => sum + part.packs, 0);
    for (const part of parts) {
      const before = shares.get(part.receivedOn) ?? 0;
      shares.set(part.receivedOn, before + part.packs / packs / supplies.length);
    }
  }
  return [...shares].map(([receivedOn, share]) => ({ orderedOn, receivedOn, share }));
}

type Part = { readonly receivedOn: Day | null; readonly packs: number };

/** What of a line came when; what was cancelled without coming tells nothing. */
function partsOf(line: PurchaseRow["lines"][number], today: Day): Part[] {
  const came = line.receiptLines
    .filter(({ receipt, packs }) => receipt.receivedOn <= today && packs > 0)
    .map(({ receipt, packs }) => ({ receivedOn: day(receipt.receivedOn), packs }));
  if (came.length > 0) return came;
  const isOpen = line.closedOn === null || line.closedOn > today;
  return isOpen ? [{ receivedOn: null, packs: line.packs }] : [];
}
