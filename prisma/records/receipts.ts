import { invoiceRate, type ShopMoney } from "#lib/purchasing/invoice-rate";
import { landedValues, type ShareRule } from "#lib/purchasing/landed-value";
import { receivedCost } from "#lib/replenishment/stock-value";
import type { Amount } from "#lib/units/amount";
import { day } from "#lib/units/day";
import { endOfDay, instant, shopDay } from "#lib/units/instant";
import { type Database, inTransaction, type Transaction } from "../client";
import { appendMovements, type MovementDraft, type Recorder } from "./ledger";
import { shopIn } from "./shop";

/** One line of what came in. The pack is the real one, not what was ordered. */
export type ReceiptLineBody = {
  readonly id: string;
  readonly supplyId: string;
  readonly purchaseLineId: string | null;
  readonly packs: number;
  readonly packAmount: Amount;
  readonly packTyped: string;
  /** Price of a pack in smallest units of the invoice's currency; null where it is not known. */
  readonly priceMinor: number | null;
  /** More than was ordered is booked only where the seller said that it came. */
  readonly moreThanOrdered?: boolean;
};

/** What came in, from whom, for how much. */
export type ReceiptBody = {
  readonly id: string;
  readonly supplierId: string | null;
  readonly receivedOn: string;
  readonly kind: "paid" | "free" | "saved";
  readonly currency: string;
  /** Shop currency per invoice currency, in millionths. */
  readonly rateMillionths: number;
  readonly taxIncluded: boolean;
  readonly deliveryMinor: number;
  readonly taxMinor: number;
  /** How delivery and tax are shared over the lines; by price where nothing is said. */
  readonly shareRule?: ShareRule;
  readonly note: string | null;
  readonly lines: readonly ReceiptLineBody[];
  /** Order lines of which part is still on its way. */
  readonly restStillComes?: readonly {
    readonly purchaseLineId: string;
    readonly packs: number;
    readonly expectedOn: string;
  }[];
};

/** What came of a receipt; where it is refused nothing of it is booked. */
export type ReceiptOutcome =
  | { readonly kind: "received" | "already-received" }
  | { readonly kind: "unknown"; readonly field: string; readonly id: string }
  /** received or cancelled before, of another supply, or only a draft */
  | { readonly kind: "line-not-open"; readonly purchaseLineId: string }
  /** received before it was ordered */
  | { readonly kind: "before-order"; readonly purchaseLineId: string; readonly placedOn: string }
  | { readonly kind: "more-than-ordered"; readonly purchaseLineId: string; readonly packs: number };

/**
 * Books a receipt: stock, landed cost (delivery and tax shared over the lines) and the order lines that it closes.
 * Free and saved supplies come in at no cash and at the cost already known, so that they never dilute the price
 * that was paid.
 *
 * @returns "already-received" for a repeated id; a refusal names the line, and nothing is booked
 */
export async function recordReceipt(
  db: Database,
  receipt: ReceiptBody,
  by: Recorder,
): Promise<ReceiptOutcome> {
  return inTransaction(db, async (tx) => (await refusalOf(tx, receipt)) ?? bookReceipt(tx, receipt, by));
}

/**
 * Books several receipts that came together, such as what was paid for and what was free: all of them or none.
 *
 * @returns the first outcome that is no booking, or "received"
 */
export async function recordReceipts(
  db: Database,
  receipts: readonly ReceiptBody[],
  by: Recorder,
): Promise<ReceiptOutcome> {
  return inTransaction(db, async (tx) => {
    for (const receipt of receipts) {
      const refusal = await refusalOf(tx, receipt);
      if (refusal !== null) return refusal;
    }
    for (const receipt of receipts) await bookReceipt(tx, receipt, by);
    return { kind: "received" };
  });
}

async function refusalOf(tx: Transaction, receipt: ReceiptBody): Promise<ReceiptOutcome | null> {
  if ((await tx.receipt.findUnique({ where: { id: receipt.id } })) !== null) {
    return { kind: "already-received" };
  }
  for (const line of receipt.lines) {
    if ((await tx.supply.findUnique({ where: { id: line.supplyId } })) === null) {
      return { kind: "unknown", field: "lines.supplyId", id: line.supplyId };
    }
  }
  return lineRefusal(tx, receipt);
}

async function bookReceipt(tx: Transaction, receipt: ReceiptBody, by: Recorder): Promise<ReceiptOutcome> {
  const shop = await shopIn(tx);
  const { timeZone } = shop;
  const today = shopDay(instant(by.now), timeZone) === receipt.receivedOn;
  const at = today ? by.now : endOfDay(day(receipt.receivedOn), timeZone);
  const { lines, restStillComes = [], ...head } = receipt;
  await tx.receipt.create({
    data: { ...head, effectiveAt: at, recordedAt: by.now, recordedBy: by.device },
  });
  const landed = receipt.kind === "paid" ? landedOf(receipt, shop) : [];
  for (const [index, line] of lines.entries()) {
    const value = landed[index] ?? null;
    const { moreThanOrdered: _said, ...columns } = line;
    await tx.receiptLine.create({
      data: { ...columns, receiptId: receipt.id, packAmount: BigInt(line.packAmount), landedValue: value },
    });
    await bookLine(tx, receipt, line, value, at, by);
  }
  await closePurchaseLines(tx, lines, restStillComes, receipt.receivedOn);
  return { kind: "received" };
}

/** Landed value of each line in the shop's currency, 1/10,000 minor unit; null where a price is missing. */
function landedOf(receipt: ReceiptBody, shop: ShopMoney): (bigint | null)[] {
  return landedValues({
    extrasMinor: receipt.deliveryMinor + (receipt.taxIncluded ? 0 : receipt.taxMinor),
    shareRule: receipt.shareRule ?? "price",
    rate: invoiceRate(receipt, shop),
    lines: receipt.lines,
  });
}

async function bookLine(
  tx: Transaction,
  receipt: ReceiptBody,
  line: ReceiptLineBody,
  landed: bigint | null,
  at: string,
  by: Recorder,
): Promise<void> {
  const received = BigInt(line.packAmount) * BigInt(line.packs);
  const stock = await tx.supplyStock.findUnique({ where: { supplyId: line.supplyId } });
  const head = {
    supplyId: line.supplyId,
    effectiveAt: at,
    effectiveDay: receipt.receivedOn,
    receiptLineId: line.id,
  };
  const draft: MovementDraft = {
    ...head,
    amount: received,
    cause: receipt.kind === "paid" ? "received" : "saved",
    typedValue: `${line.packs} × ${line.packTyped}`,
  };
  const seenByCount = stock?.countedAt !== undefined && stock.countedAt !== null && stock.countedAt > at;
  if (landed === null || received <= 0n || seenByCount) {
    await appendMovements(tx, [draft], by);
    return;
  }
  const before = {
    amount: stock?.amount ?? 0n,
    value: stock?.value ?? 0n,
    cost: { value: stock?.costValue ?? 0n, amount: stock?.costAmount ?? 0n },
  };
  const after = receivedCost(before, received, landed);
  const rows: MovementDraft[] = [{ ...draft, value: landed }];
  if (after.difference !== 0n) {
    rows.push({ ...head, amount: 0n, value: after.difference, cause: "cost-difference" });
  }
  await appendMovements(tx, rows, by);
  await tx.supplyStock.update({
    where: { supplyId: line.supplyId },
    data: { costValue: after.cost.value, costAmount: after.cost.amount },
  });
}

/** Why the order lines of a receipt cannot be received, or null where all can. */
async function lineRefusal(tx: Transaction, receipt: ReceiptBody): Promise<ReceiptOutcome | null> {
  for (const [purchaseLineId, lines] of linesByOrderLine(receipt.lines)) {
    const open = await tx.purchaseLine.findFirst({
      where: { id: purchaseLineId, closedOn: null, purchase: { state: "placed" } },
      select: { supplyId: true, packs: true, packAmount: true, purchase: { select: { placedOn: true } } },
    });
    if (open === null || lines.some((line) => line.supplyId !== open.supplyId)) {
      return { kind: "line-not-open", purchaseLineId };
    }
    const { placedOn } = open.purchase;
    if (receipt.receivedOn < placedOn) return { kind: "before-order", purchaseLineId, placedOn };
    if (isMore(lines, open) && !lines.some((line) => line.moreThanOrdered === true)) {
      return { kind: "more-than-ordered", purchaseLineId, packs: open.packs };
    }
  }
  return null;
}

function linesByOrderLine(lines: readonly ReceiptLineBody[]): Map<string, ReceiptLineBody[]> {
  const groups = new Map<string, ReceiptLineBody[]>();
  for (const line of lines) {
    if (line.purchaseLineId === null) continue;
    groups.set(line.purchaseLineId, [...(groups.get(line.purchaseLineId) ?? []), line]);
  }
  return groups;
}

/** More packs, and more in them: a fuller pack, or the same amount in smaller packs, is no more than was ordered. */
function isMore(
  lines: readonly ReceiptLineBody[],
  ordered: { readonly packs: number; readonly packAmount: bigint },
): boolean {
  const packs = lines.reduce((sum, line) => sum + line.packs, 0);
  const came = lines.reduce((sum, line) => sum + BigInt(line.packAmount) * BigInt(line.packs), 0n);
  return packs > ordered.packs && came > ordered.packAmount * BigInt(ordered.packs);
}

async function closePurchaseLines(
  tx: Transaction,
  lines: readonly ReceiptLineBody[],
  rests: NonNullable<ReceiptBody["restStillComes"]>,
  on: string,
): Promise<void> {
  const arrived = new Set(lines.map((line) => line.purchaseLineId).filter((id) => id !== null));
  for (const lineId of arrived) {
    const ordered = await tx.purchaseLine.update({
      where: { id: lineId, closedOn: null },
      data: { closedOn: on, closedAs: "received" },
    });
    const rest = rests.find((part) => part.purchaseLineId === lineId);
    if (rest === undefined) continue;
    const { id, closedOn: _on, closedAs: _as, ...same } = ordered;
    await tx.purchaseLine.create({
      data: { ...same, id: `${id}-rest`, packs: rest.packs, expectedOn: rest.expectedOn, restSince: on },
    });
  }
}
