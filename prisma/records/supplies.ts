import { AMOUNT_PER_UNIT, type Amount, amount } from "#lib/units/amount";
import type { UseUnit } from "#lib/units/use-unit";
import { type Database, inTransaction } from "../client";
import type { SupplyModel } from "../generated/models/Supply";
import { staleForecasts } from "./stale-forecasts";

/** A material in stock, with the units it is counted and used in. */
export type Supply = Omit<SupplyModel, "countAmount" | "fullAmount" | "useUnit"> & {
  readonly useUnit: UseUnit;
  readonly countAmount: Amount | null;
  readonly fullAmount: Amount | null;
};

/** What the ledger says of a supply. */
export type Stock = {
  readonly supplyId: string;
  readonly amount: Amount;
  /** Null: never counted, so the amount is no stock figure. */
  readonly countedAt: string | null;
  /** Moving average cost, 1/10,000 minor unit per use unit; null where none is known. */
  readonly unitCost: number | null;
  readonly value: number;
};

/** Supplies in the shop's order; retired ones only where asked for. */
export async function suppliesOf(
  db: Database,
  which: { readonly retired?: boolean } = {},
): Promise<Supply[]> {
  const rows = await db.supply.findMany({
    where: which.retired === true ? {} : { retired: false },
    orderBy: [{ position: "asc" }, { name: "asc" }],
  });
  return rows.map(supplyFrom);
}

/** The use unit of every supply, retired ones too. */
export async function unitsOfSupplies(db: Database): Promise<Pick<Supply, "id" | "useUnit">[]> {
  const rows = await db.supply.findMany({ select: { id: true, useUnit: true } });
  return rows.map((row) => ({ id: row.id, useUnit: row.useUnit as UseUnit }));
}

/** One supply, or null. */
export async function supplyOf(db: Database, id: string): Promise<Supply | null> {
  const row = await db.supply.findUnique({ where: { id } });
  return row === null ? null : supplyFrom(row);
}

/** Creates a supply or saves its changes. Its use unit cannot change once the ledger knows it. */
export async function saveSupply(
  db: Database,
  supply: Supply,
): Promise<{ kind: "saved" } | { kind: "use-unit-fixed"; useUnit: string }> {
  return inTransaction(db, async (tx) => {
    const known = await tx.supply.findUnique({ where: { id: supply.id }, select: { useUnit: true } });
    if (known !== null && known.useUnit !== supply.useUnit) {
      const moved = await tx.movement.findFirst({ where: { supplyId: supply.id }, select: { id: true } });
      const carded = await tx.recipeStep.findFirst({ where: { supplyId: supply.id }, select: { id: true } });
      if (moved !== null || carded !== null) return { kind: "use-unit-fixed", useUnit: known.useUnit };
    }
    const data = {
      ...supply,
      countAmount: supply.countAmount === null ? null : BigInt(supply.countAmount),
      fullAmount: supply.fullAmount === null ? null : BigInt(supply.fullAmount),
    };
    await tx.supply.upsert({ where: { id: supply.id }, create: data, update: data });
    await staleForecasts(tx);
    return { kind: "saved" };
  });
}

/** Stock of every supply that the ledger knows. */
export async function stockOf(db: Database): Promise<Stock[]> {
  const rows = await db.supplyStock.findMany();
  return rows.map((row) => ({
    supplyId: row.supplyId,
    amount: amount(Number(row.amount)),
    countedAt: row.countedAt,
    unitCost:
      row.costAmount === 0n ? null : (Number(row.costValue) * AMOUNT_PER_UNIT) / Number(row.costAmount),
    value: Number(row.value),
  }));
}

function supplyFrom(row: SupplyModel): Supply {
  return {
    ...row,
    useUnit: row.useUnit as UseUnit,
    countAmount: row.countAmount === null ? null : amount(Number(row.countAmount)),
    fullAmount: row.fullAmount === null ? null : amount(Number(row.fullAmount)),
  };
}
