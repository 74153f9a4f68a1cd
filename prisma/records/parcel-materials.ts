import type { TakenMaterial } from "#lib/packing/cost-by-kind";
import { amount } from "#lib/units/amount";
import type { Database } from "../client";
import { Prisma } from "../generated/client";

type TakenRow = {
  readonly parcelId: string;
  readonly supplyId: string;
  readonly kind: string;
  readonly amount: number | bigint;
  readonly value: number | bigint | null;
};

/**
 * What parcels took, as it stands now: corrections are in it, and of a voided parcel nothing is.
 *
 * @param db the database
 * @param parcelIds parcels, some hundreds at most
 * @returns by parcel, in the order of the work, cartons too; one that took nothing is not in it
 */
export async function parcelMaterials(
  db: Database,
  parcelIds: readonly string[],
): Promise<Map<string, TakenMaterial[]>> {
  const byParcel = new Map<string, TakenMaterial[]>();
  if (parcelIds.length === 0) return byParcel;
  // The + keeps SQLite from reading all lines of the ledger that reverse nothing, instead of those of the parcels.
  const rows = await db.$queryRaw<TakenRow[]>`
    SELECT m."parcelId", m."supplyId", s."kind", -m."amount" AS "amount", -m."value" AS "value"
    FROM "Movement" m JOIN "Supply" s ON s."id" = m."supplyId"
    WHERE m."parcelId" IN (${Prisma.join([...parcelIds])}) AND m."cause" = 'packed' AND +m."reversesId" IS NULL
      AND NOT EXISTS (SELECT 1 FROM "Movement" r WHERE r."reversesId" = m."id")
    ORDER BY m."id"`;
  for (const { parcelId, supplyId, kind, ...row } of rows) {
    const value = row.value === null ? null : Number(row.value);
    const material = { supplyId, kind, amount: amount(Number(row.amount)), value };
    const own = byParcel.get(parcelId);
    if (own === undefined) byParcel.set(parcelId, [material]);
    else own.push(material);
  }
  return byParcel;
}
