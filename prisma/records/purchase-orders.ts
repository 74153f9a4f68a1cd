import { type PurchaseStatus, purchaseStatus } from "#lib/purchasing/purchase-status";
import { type Amount, amount } from "#lib/units/amount";
import { type Day, day } from "#lib/units/day";
import type { UseUnit } from "#lib/units/use-unit";
import type { Database } from "../client";
import type { Prisma } from "../generated/client";

/** What came of an order line, on which day, and what the pack and the price really were. */
export type OrderArrival = {
  readonly receiptId: string;
  readonly receivedOn: Day;
  readonly packs: number;
  readonly packAmount: Amount;
  readonly packTyped: string;
  readonly priceMinor: number | null;
  readonly currency: string;
};

/** One supply of an order, with what became of it. What stands in for the rest of a line is told with that line. */
export type OrderLine = {
  readonly id: string;
  readonly supplyId: string;
  readonly supply: string;
  readonly unit: UseUnit;
  readonly offerId: string | null;
  /** the offer's words for a pack; null where the offer is not known */
  readonly pack: string | null;
  readonly offerRetired: boolean;
  readonly packs: number;
  readonly packAmount: Amount;
  readonly priceMinor: number | null;
  /** as first expected */
  readonly expectedOn: Day;
  /** what is still on order; null where nothing is */
  readonly open: { readonly lineId: string; readonly packs: number; readonly expectedOn: Day } | null;
  readonly closedAs: string | null;
  readonly closedOn: Day | null;
  readonly arrivals: readonly OrderArrival[];
};

/** An order with its supplier, its lines and its status. */
export type PurchaseOrder = {
  readonly id: string;
  readonly supplierId: string;
  readonly supplierName: string;
  readonly status: PurchaseStatus;
  /** of a draft: the day on which it was written */
  readonly placedOn: Day;
  readonly placedAt: string | null;
  readonly deliveryMinor: number | null;
  readonly note: string | null;
  readonly lines: readonly OrderLine[];
};

const PARTS = {
  supplier: { select: { name: true } },
  lines: {
    orderBy: { id: "asc" },
    include: {
      supply: { select: { name: true, useUnit: true } },
      offer: { select: { pack: true, retired: true } },
      receiptLines: {
        orderBy: { id: "asc" },
        include: { receipt: { select: { receivedOn: true, currency: true } } },
      },
    },
  },
} as const satisfies Prisma.PurchaseInclude;

type PurchaseRow = Prisma.PurchaseGetPayload<{ include: typeof PARTS }>;
type LineRow = PurchaseRow["lines"][number];

/** One order, or null where there is none of this id. */
export async function purchaseOf(db: Database, id: string): Promise<PurchaseOrder | null> {
  const row = await db.purchase.findUnique({ where: { id }, include: PARTS });
  return row === null ? null : orderOf(row);
}

/**
 * Orders: all drafts and all that is on order first, then the latest of the others.
 *
 * @param others how many of those that are neither drafts nor on order
 */
export async function purchasesOf(
  db: Database,
  { others }: { readonly others: number },
): Promise<PurchaseOrder[]> {
  const open: Prisma.PurchaseWhereInput = {
    OR: [{ state: "draft" }, { lines: { some: { closedOn: null } } }],
  };
  const order = [{ placedOn: "desc" as const }, { id: "asc" as const }];
  const [first, rest] = await Promise.all([
    db.purchase.findMany({ where: open, orderBy: order, include: PARTS }),
    db.purchase.findMany({ where: { NOT: open }, orderBy: order, take: others, include: PARTS }),
  ]);
  return [...first, ...rest].map(orderOf);
}

function orderOf(row: PurchaseRow): PurchaseOrder {
  const lines = row.lines.map((line) => ({
    cameIn: line.receiptLines.length > 0,
    closedAs: line.closedAs,
  }));
  return {
    id: row.id,
    supplierId: row.supplierId,
    supplierName: row.supplier.name,
    status: purchaseStatus(row.state, lines),
    placedOn: day(row.placedOn),
    placedAt: row.placedAt,
    deliveryMinor: row.deliveryMinor,
    note: row.note,
    lines: row.lines.filter((line) => line.restSince === null).map((line) => orderLine(line, row.lines)),
  };
}

/** A line with those that stand in for its rest: each bears the id of the one before and "-rest". */
function orderLine(first: LineRow, all: readonly LineRow[]): OrderLine {
  const parts = all.filter((line) => line.id === first.id || isRestOf(line, first));
  const last = parts.reduce((a, b) => (b.id.length > a.id.length ? b : a), first);
  return {
    id: first.id,
    supplyId: first.supplyId,
    supply: first.supply.name,
    unit: first.supply.useUnit as UseUnit,
    offerId: first.offerId,
    pack: first.offer?.pack ?? null,
    offerRetired: first.offer?.retired ?? false,
    packs: first.packs,
    packAmount: amount(Number(first.packAmount)),
    priceMinor: first.priceMinor,
    expectedOn: day(first.expectedOn),
    open:
      last.closedOn === null
        ? { lineId: last.id, packs: last.packs, expectedOn: day(last.expectedOn) }
        : null,
    closedAs: last.closedAs,
    closedOn: last.closedOn === null ? null : day(last.closedOn),
    arrivals: parts.flatMap((line) => line.receiptLines.map(arrivalOf)),
  };
}

function isRestOf(line: LineRow, first: LineRow): boolean {
  return line.restSince !== null && line.id.replace(/(-rest)+$/, "") === first.id;
}

function arrivalOf(line: LineRow["receiptLines"][number]): OrderArrival {
  return {
    receiptId: line.receiptId,
    receivedOn: day(line.receipt.receivedOn),
    packs: line.packs,
    packAmount: amount(Number(line.packAmount)),
    packTyped: line.packTyped,
    priceMinor: line.priceMinor,
    currency: line.receipt.currency,
  };
}
