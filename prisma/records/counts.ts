import { type Amount, amount } from "#lib/units/amount";
import { instant, shopDay } from "#lib/units/instant";
import { type Database, inTransaction, type Transaction } from "../client";
import { appendMovements, type Recorder } from "./ledger";
import { shopIn } from "./shop";

/** A dated statement of what is on the shelf. */
export type CountBody = {
  readonly id: string;
  readonly supplyId: string;
  readonly amount: Amount;
  readonly method: "number" | "roll" | "height" | "weight" | "looks-right";
  /** As the counter typed it. */
  readonly typed: string;
  readonly note: string | null;
  /** Instant of the count; left out, now. */
  readonly countedAt?: string;
};

/**
 * Records a count. Its difference to the book is a movement of its own; the first count of a supply
 * opens its stock.
 *
 * @returns the difference to the book (null for the first count); "already-counted" for a repeated id
 */
export async function recordCount(
  db: Database,
  count: CountBody,
  by: Recorder,
): Promise<
  | { kind: "counted"; difference: Amount | null }
  | { kind: "already-counted" }
  | { kind: "unknown"; field: string; id: string }
> {
  return inTransaction(db, async (tx) => {
    if ((await tx.count.findUnique({ where: { id: count.id } })) !== null) return { kind: "already-counted" };
    if ((await tx.supply.findUnique({ where: { id: count.supplyId } })) === null) {
      return { kind: "unknown", field: "supplyId", id: count.supplyId };
    }
    const at = count.countedAt ?? by.now;
    const { timeZone } = await shopIn(tx);
    const countedDay = shopDay(instant(at), timeZone);
    const before = await lastCountBefore(tx, count.supplyId, at);
    const next = await firstCountAfter(tx, count.supplyId, at);
    const bookAmount = await bookAt(tx, count.supplyId, at);
    const stated = BigInt(count.amount);
    await tx.count.create({
      data: {
        ...count,
        countedAt: at,
        countedDay,
        recordedAt: by.now,
        recordedBy: by.device,
        amount: stated,
        bookAmount,
      },
    });
    const difference = stated - bookAmount;
    const head = { supplyId: count.supplyId, effectiveAt: at, effectiveDay: countedDay, countId: count.id };
    const cause = before ? ("count-difference" as const) : ("opening" as const);
    const own = { ...head, amount: difference, cause, words: count.note, typedValue: count.typed };
    // A later count already stated what was there: it takes the difference back, so today's stock stands.
    const balance = next && {
      ...own,
      amount: -difference,
      cause: "count-difference" as const,
      effectiveAt: next.countedAt,
      effectiveDay: next.countedDay,
      countId: next.id,
      words: "already seen by this count",
    };
    await appendMovements(tx, balance ? [own, balance] : [own], by);
    if (!next) await tx.supplyStock.update({ where: { supplyId: count.supplyId }, data: { countedAt: at } });
    return { kind: "counted", difference: before ? amount(Number(difference)) : null };
  });
}

async function lastCountBefore(tx: Transaction, supplyId: string, at: string): Promise<boolean> {
  return (
    (await tx.count.findFirst({ where: { supplyId, countedAt: { lte: at } }, select: { id: true } })) !== null
  );
}

async function firstCountAfter(tx: Transaction, supplyId: string, at: string) {
  return tx.count.findFirst({
    where: { supplyId, countedAt: { gt: at } },
    orderBy: { countedAt: "asc" },
    select: { id: true, countedAt: true, countedDay: true },
  });
}

async function bookAt(tx: Transaction, supplyId: string, at: string): Promise<bigint> {
  // Counted backwards from today's stock: what came after the count is little, what came before is all history.
  const stock = await tx.supplyStock.findUnique({ where: { supplyId }, select: { amount: true } });
  const later = await tx.movement.aggregate({
    where: { supplyId, effectiveAt: { gt: at } },
    _sum: { amount: true },
  });
  return (stock?.amount ?? 0n) - (later._sum.amount ?? 0n);
}
