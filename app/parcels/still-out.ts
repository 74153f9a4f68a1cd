import { type Amount, amount } from "#lib/units/amount";
import type { ParcelMovement } from "#prisma/records/parcel-lists";

/**
 * What a parcel took of each supply and has not brought back: the sum of its movements, reversals among them.
 *
 * @param movements all movements of the parcel
 * @returns amounts above nothing by supply
 */
export function stillOut(
  movements: readonly Pick<ParcelMovement, "supplyId" | "amount">[],
): ReadonlyMap<string, Amount> {
  const sums = new Map<string, number>();
  for (const { supplyId, amount: moved } of movements) {
    sums.set(supplyId, (sums.get(supplyId) ?? 0) - moved);
  }
  return new Map([...sums].flatMap(([id, sum]) => (sum > 0 ? [[id, amount(sum)] as const] : [])));
}
