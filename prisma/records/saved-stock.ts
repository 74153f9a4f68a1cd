import { type Amount, amount } from "#lib/units/amount";
import type { Day } from "#lib/units/day";
import type { Database } from "../client";

/** A supply that came in for nothing. */
export type SavedSupply = { readonly supplyId: string; readonly name: string; readonly amount: Amount };

/**
 * What came in saved or free in a span of days, from the day roll-up: what was taken back is not in it.
 *
 * @param db the database
 * @param span days, both included
 * @returns supplies with an amount above zero, in the shop's order
 */
export async function savedStock(
  db: Database,
  span: { readonly from: Day; readonly to: Day },
): Promise<SavedSupply[]> {
  const rows = await db.supplyDay.groupBy({
    by: ["supplyId"],
    where: { cause: "saved", day: { gte: span.from, lte: span.to } },
    _sum: { amount: true },
  });
  const amounts = new Map(rows.map((row) => [row.supplyId, row._sum.amount ?? 0n]));
  const supplies = await db.supply.findMany({
    where: { id: { in: [...amounts.keys()] } },
    orderBy: [{ position: "asc" }, { name: "asc" }],
    select: { id: true, name: true },
  });
  return supplies.flatMap(({ id, name }) => {
    const sum = amounts.get(id) ?? 0n;
    return sum > 0n ? [{ supplyId: id, name, amount: amount(Number(sum)) }] : [];
  });
}
