import type { Amount } from "#lib/units/amount";
import { day } from "#lib/units/day";
import { endOfDay, instant, shopDay } from "#lib/units/instant";
import { type Database, inTransaction } from "../client";
import { appendMovements, type Recorder } from "./ledger";
import { shopIn } from "./shop";

/** Torn tissue, a wet carton, the end of a roll. */
export type Spoilage = {
  readonly supplyId: string;
  /** Above 0. */
  readonly amount: Amount;
  readonly typedValue: string;
  readonly typedUnit: string;
  /** Why. */
  readonly words: string;
  readonly on: string;
};

/** Books what was spoilt out of stock, at the supply's cost. */
export async function recordSpoilage(
  db: Database,
  spoilt: Spoilage,
  by: Recorder,
): Promise<{ kind: "spoilt" } | { kind: "unknown"; field: string; id: string }> {
  return inTransaction(db, async (tx) => {
    if ((await tx.supply.findUnique({ where: { id: spoilt.supplyId } })) === null) {
      return { kind: "unknown", field: "supplyId", id: spoilt.supplyId };
    }
    const { timeZone } = await shopIn(tx);
    const at = shopDay(instant(by.now), timeZone) === spoilt.on ? by.now : endOfDay(day(spoilt.on), timeZone);
    const draft = {
      supplyId: spoilt.supplyId,
      amount: -BigInt(spoilt.amount),
      cause: "spoilt" as const,
      effectiveAt: at,
      effectiveDay: spoilt.on,
      typedValue: spoilt.typedValue,
      typedUnit: spoilt.typedUnit,
      words: spoilt.words,
    };
    await appendMovements(tx, [draft], by);
    return { kind: "spoilt" };
  });
}
