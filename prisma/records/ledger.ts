import { stockValue, type UnitCost } from "#lib/replenishment/stock-value";
import { day } from "#lib/units/day";
import type { Transaction } from "../client";
import { Prisma } from "../generated/client";
import { insertRows } from "./insert-rows";
import { staleForecasts } from "./stale-forecasts";

/** Why stock moved. */
export type Cause =
  | "received"
  | "saved"
  | "packed"
  | "spoilt"
  | "returned"
  | "opening"
  | "count-difference"
  | "cost-difference";

/** What forecasts look at, but for what parcels take: that is marked with the parcel itself. */
const FORECAST_CAUSES: readonly Cause[] = ["spoilt", "returned", "count-difference"];

/** A movement that is about to be appended. Amounts are signed: into stock positive. */
export type MovementDraft = {
  readonly supplyId: string;
  readonly amount: bigint;
  readonly cause: Cause;
  readonly effectiveAt: string;
  readonly effectiveDay: string;
  /** Given where the value is known from elsewhere (a receipt, a reversal); else the stock's unit cost counts. */
  readonly value?: bigint | null;
  readonly unusual?: boolean;
  readonly typedValue?: string | null;
  readonly typedUnit?: string | null;
  readonly words?: string | null;
  readonly reversesId?: number;
  readonly parcelId?: string;
  readonly recipeStepId?: string | null;
  readonly receiptLineId?: string;
  readonly countId?: string;
};

/** Who records, and when. */
export type Recorder = { readonly device: string; readonly now: string };

/** Columns that a draft may leave out: rows of one statement have the same ones. */
const EMPTY = {
  typedValue: null,
  typedUnit: null,
  words: null,
  reversesId: null,
  parcelId: null,
  recipeStepId: null,
  receiptLineId: null,
  countId: null,
};

type StockState = { readonly cost: UnitCost; readonly countedAt: string | null };

/**
 * Appends movements and keeps on hand and the day roll-up in step, all in the caller's transaction.
 * A movement that took effect before a later count writes a balancing movement at that count too:
 * the count already saw it, so history learns of it and today's stock does not move.
 *
 * @param tx the open transaction
 * @param drafts movements in the order to append
 * @param by who records, and when
 * @returns value of the drafts themselves (without balancing rows), 1/10,000 minor unit; null if any is unknown
 */
export async function appendMovements(
  tx: Transaction,
  drafts: readonly MovementDraft[],
  by: Recorder,
): Promise<bigint | null> {
  if (drafts.length === 0) return 0n;
  const stock = await stockStates(tx, [...new Set(drafts.map((draft) => draft.supplyId))]);
  const valued = drafts.map((draft) => ({ ...draft, value: draftValue(draft, stock) }));
  const balancing = await balancingDrafts(tx, valued, stock);
  const rows = [...valued, ...balancing];
  await insertRows(
    tx,
    "Movement",
    rows.map((row) => ({
      ...EMPTY,
      ...row,
      unusual: row.unusual ?? false,
      recordedAt: by.now,
      recordedBy: by.device,
    })),
  );
  await addToStock(tx, rows);
  await addToDays(tx, rows);
  const values = valued.map((row) => row.value);
  return values.reduce<bigint | null>(
    (sum, value) => (sum === null || value === null ? null : sum + value),
    0n,
  );
}

function draftValue(draft: MovementDraft, stock: Map<string, StockState>): bigint | null {
  if (draft.value !== undefined) return draft.value;
  const state = stock.get(draft.supplyId);
  return state === undefined ? null : stockValue(draft.amount, state.cost);
}

async function stockStates(tx: Transaction, supplyIds: string[]): Promise<Map<string, StockState>> {
  const rows = await tx.$queryRaw<
    { supplyId: string; costValue: bigint | number; costAmount: bigint | number; countedAt: string | null }[]
  >`SELECT "supplyId", "costValue", "costAmount", "countedAt" FROM "SupplyStock"
    WHERE "supplyId" IN (${Prisma.join(supplyIds)})`;
  return new Map(
    rows.map((row) => [
      row.supplyId,
      {
        cost: { value: BigInt(row.costValue), amount: BigInt(row.costAmount) },
        countedAt: row.countedAt,
      },
    ]),
  );
}

async function balancingDrafts(
  tx: Transaction,
  drafts: readonly MovementDraft[],
  stock: Map<string, StockState>,
): Promise<MovementDraft[]> {
  const late = drafts.filter((draft) => {
    const countedAt = stock.get(draft.supplyId)?.countedAt ?? null;
    return draft.countId === undefined && countedAt !== null && countedAt > draft.effectiveAt;
  });
  if (late.length === 0) return [];
  const counts = await tx.count.findMany({
    where: { supplyId: { in: [...new Set(late.map((draft) => draft.supplyId))] } },
    orderBy: { countedAt: "asc" },
    select: { id: true, supplyId: true, countedAt: true, countedDay: true },
  });
  return late.flatMap((draft) => {
    const ofSupply = counts.filter((row) => row.supplyId === draft.supplyId);
    const index = ofSupply.findIndex((row) => row.countedAt > draft.effectiveAt);
    const count = ofSupply[index];
    if (count === undefined) return [];
    const value = draft.value === undefined || draft.value === null ? null : -draft.value;
    return [
      {
        supplyId: draft.supplyId,
        amount: -draft.amount,
        value,
        cause: index === 0 ? ("opening" as const) : ("count-difference" as const),
        effectiveAt: count.countedAt,
        effectiveDay: count.countedDay,
        countId: count.id,
        unusual: draft.unusual ?? false,
        words: "already seen by this count",
      },
    ];
  });
}

async function addToStock(tx: Transaction, rows: readonly MovementDraft[]): Promise<void> {
  const sums = new Map<string, { amount: bigint; value: bigint }>();
  for (const row of rows) {
    const sum = sums.get(row.supplyId) ?? { amount: 0n, value: 0n };
    sums.set(row.supplyId, { amount: sum.amount + row.amount, value: sum.value + (row.value ?? 0n) });
  }
  const values = [...sums].map(
    ([supplyId, sum]) => Prisma.sql`(${supplyId}, ${sum.amount}, ${sum.value}, 0, 0)`,
  );
  await tx.$executeRaw`
    INSERT INTO "SupplyStock" ("supplyId", "amount", "value", "costValue", "costAmount")
    VALUES ${Prisma.join(values)}
    ON CONFLICT ("supplyId") DO UPDATE SET
      "amount" = "SupplyStock"."amount" + excluded."amount",
      "value" = "SupplyStock"."value" + excluded."value"`;
}

async function addToDays(tx: Transaction, rows: readonly MovementDraft[]): Promise<void> {
  const sums = new Map<string, { row: MovementDraft; amount: bigint; value: bigint }>();
  for (const row of rows) {
    const key = [row.supplyId, row.effectiveDay, row.cause, row.unusual === true].join("\n");
    const sum = sums.get(key) ?? { row, amount: 0n, value: 0n };
    sums.set(key, { row, amount: sum.amount + row.amount, value: sum.value + (row.value ?? 0n) });
  }
  const values = [...sums.values()].map(
    ({ row, amount, value }) =>
      Prisma.sql`(${row.supplyId}, ${row.effectiveDay}, ${row.cause}, ${row.unusual === true}, ${amount}, ${value})`,
  );
  await tx.$executeRaw`
    INSERT INTO "SupplyDay" ("supplyId", "day", "cause", "unusual", "amount", "value")
    VALUES ${Prisma.join(values)}
    ON CONFLICT ("supplyId", "day", "cause", "unusual") DO UPDATE SET
      "amount" = "SupplyDay"."amount" + excluded."amount",
      "value" = "SupplyDay"."value" + excluded."value"`;
  const [earliest] = rows
    .filter((row) => FORECAST_CAUSES.includes(row.cause))
    .map((row) => day(row.effectiveDay))
    .sort();
  if (earliest !== undefined) await staleForecasts(tx, earliest);
}
