import { receivedCost } from "#lib/replenishment/stock-value";
import type { Amount } from "#lib/units/amount";
import { day } from "#lib/units/day";
import { endOfDay, instant, shopDay } from "#lib/units/instant";
import { splitMinor } from "#lib/units/money";
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
  /** Price of a pack in the invoice's currency, minor units; null where it is not known. */
  readonly priceMinor: number | null;
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
  readonly note: string | null;
  readonly lines: readonly ReceiptLineBody[];
  /** Order lines of which part is still on its way. */
  readonly restStillComes?: readonly {
    readonly purchaseLineId: string;
    readonly packs: number;
    readonly expectedOn: string;
  }[];
};

const VALUE_PER_MINOR = 10_000;
const MILLION = 1_000_000;

/**
 * Books a receipt: stock, landed cost (delivery and tax shared over the lines by price) and the order
 * lines that it closes. Free and saved supplies come in at no cash and at the cost already known, so
 * that they never dilute the price that was paid.
 *
 * @returns "already-received" for a repeated id; "line-not-open" where an order line was received or cancelled
 *   before, or is of another supply; nothing is booked in either case
 */
export async function recordReceipt(
  db: Database,
  receipt: ReceiptBody,
  by: Recorder,
): Promise<
  | { kind: "received" | "already-received" }
  | { kind: "unknown"; field: string; id: string }
  | { kind: "line-not-open"; purchaseLineId: string }
> {
  return inTransaction(db, async (tx) => {
    if ((await tx.receipt.findUnique({ where: { id: receipt.id } })) !== null)
      return { kind: "already-received" };
    for (const line of receipt.lines) {
      if ((await tx.supply.findUnique({ where: { id: line.supplyId } })) === null) {
        return { kind: "unknown", field: "lines.supplyId", id: line.supplyId };
      }
    }
    const closed = await lineNotOpen(tx, receipt.lines);
    if (closed !== null) return { kind: "line-not-open", purchaseLineId: closed };
    const { timeZone } = await shopIn(tx);
    const today = shopDay(instant(by.now), timeZone) === receipt.receivedOn;
    const at = today ? by.now : endOfDay(day(receipt.receivedOn), timeZone);
    const { lines, restStillComes = [], ...head } = receipt;
    await tx.receipt.create({
      data: { ...head, effectiveAt: at, recordedAt: by.now, recordedBy: by.device },
    });
    const landed = landedValues(receipt);
    for (const [index, line] of lines.entries()) {
      const value = landed[index] ?? null;
      await tx.receiptLine.create({
        data: { ...line, receiptId: receipt.id, packAmount: BigInt(line.packAmount), landedValue: value },
      });
      await bookLine(tx, receipt, line, value, at, by);
    }
    await closePurchaseLines(tx, lines, restStillComes, receipt.receivedOn);
    return { kind: "received" };
  });
}

/** Landed value of each line in the shop's currency, 1/10,000 minor unit; null where a price is missing. */
function landedValues(receipt: ReceiptBody): (bigint | null)[] {
  if (receipt.kind !== "paid") return receipt.lines.map(() => null);
  const prices = receipt.lines.map((line) =>
    line.priceMinor === null ? null : line.priceMinor * line.packs,
  );
  const extras = receipt.deliveryMinor + (receipt.taxIncluded ? 0 : receipt.taxMinor);
  const known = prices.map((price) => price ?? 0);
  const total = known.reduce((sum, price) => sum + price, 0);
  const shares = splitMinor(extras, total === 0 ? known.map(() => 1) : known);
  return prices.map((price, index) => {
    if (price === null) return null;
    const minor = price + (shares[index] ?? 0);
    return (BigInt(minor) * BigInt(receipt.rateMillionths) * BigInt(VALUE_PER_MINOR)) / BigInt(MILLION);
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

/** The first order line of a receipt that is not on its way, or null where all are. */
async function lineNotOpen(tx: Transaction, lines: readonly ReceiptLineBody[]): Promise<string | null> {
  for (const { purchaseLineId, supplyId } of lines) {
    if (purchaseLineId === null) continue;
    const open = await tx.purchaseLine.findFirst({
      where: { id: purchaseLineId, supplyId, closedOn: null },
      select: { id: true },
    });
    if (open === null) return purchaseLineId;
  }
  return null;
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
