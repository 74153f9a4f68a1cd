import type { TakenMaterial } from "#lib/packing/cost-by-kind";
import { amount } from "#lib/units/amount";
import type { Day } from "#lib/units/day";
import type { Database } from "../client";
import { Prisma } from "../generated/client";

/** Parcels of one item type in a span of days, and what they took in all. */
export type TypeCosts = {
  readonly itemTypeId: string;
  readonly parcels: number;
  readonly pieces: number;
  /** what each parcel cost as booked, 1/10,000 minor unit; those with a supply of unknown cost are not in it */
  readonly costs: readonly number[];
  /** of all parcels, one entry a supply; the values are those of the parcels in `costs` alone */
  readonly taken: readonly TakenMaterial[];
};

type ParcelRow = {
  readonly itemTypeId: string;
  readonly pieces: number | bigint;
  readonly value: number | bigint | null;
  readonly unpriced: number | bigint;
};
type TakenRow = {
  readonly itemTypeId: string;
  readonly supplyId: string;
  readonly kind: string;
  readonly amount: number | bigint;
  readonly value: number | bigint | null;
};

/**
 * What packing cost in a span of days by item type, from the ledger as it stands: parcels that held nothing else, and
 * that were neither voided nor unusual.
 *
 * @param db the database
 * @param span days, both included
 * @returns item types with a parcel, in no order
 */
export async function typeCosts(
  db: Database,
  span: { readonly from: Day; readonly to: Day },
): Promise<TypeCosts[]> {
  // CROSS JOIN and + keep SQLite from starting at the pieces, or at all lines that reverse nothing: 5 ms instead of 400.
  const sent = Prisma.sql`
    WITH sent AS (
      SELECT p."id" AS "id", pp."itemTypeId" AS "itemTypeId", pp."pieces" AS "pieces"
      FROM "Parcel" p CROSS JOIN "ParcelPiece" pp ON pp."parcelId" = p."id"
      WHERE p."packedOn" >= ${span.from} AND p."packedOn" <= ${span.to} AND p."voidedAt" IS NULL AND NOT p."unusual"
        AND (SELECT COUNT(*) FROM "ParcelPiece" q WHERE q."parcelId" = p."id") = 1
    ), used AS (
      SELECT sent.*, m."supplyId" AS "supplyId", -m."amount" AS "amount", -m."value" AS "value",
        SUM(m."id" IS NOT NULL AND m."value" IS NULL) OVER (PARTITION BY sent."id") AS "unpriced"
      FROM sent LEFT JOIN "Movement" m ON m."parcelId" = sent."id" AND m."cause" = 'packed' AND +m."reversesId" IS NULL
        AND NOT EXISTS (SELECT 1 FROM "Movement" r WHERE r."reversesId" = m."id")
    )`;
  const [parcels, taken] = await Promise.all([
    db.$queryRaw<ParcelRow[]>`${sent}
      SELECT "itemTypeId", "pieces", SUM("value") AS "value", MAX("unpriced") AS "unpriced"
      FROM used GROUP BY "id" ORDER BY "id"`,
    db.$queryRaw<TakenRow[]>`${sent}
      SELECT "itemTypeId", "supplyId", s."kind" AS "kind", SUM("amount") AS "amount",
        SUM("value") FILTER (WHERE "unpriced" = 0) AS "value"
      FROM used JOIN "Supply" s ON s."id" = used."supplyId" GROUP BY 1, 2, 3 ORDER BY s."position", 2`,
  ]);
  return [...new Set(parcels.map(({ itemTypeId }) => itemTypeId))].map((itemTypeId) => {
    const own = parcels.filter((row) => row.itemTypeId === itemTypeId);
    return {
      itemTypeId,
      parcels: own.length,
      pieces: own.reduce((sum, row) => sum + Number(row.pieces), 0),
      costs: own.flatMap((row) => (Number(row.unpriced) > 0 ? [] : [Number(row.value ?? 0)])),
      taken: taken.filter((row) => row.itemTypeId === itemTypeId).map(takenFrom),
    };
  });
}

function takenFrom(row: TakenRow): TakenMaterial {
  return {
    supplyId: row.supplyId,
    kind: row.kind,
    amount: amount(Number(row.amount)),
    value: Number(row.value ?? 0),
  };
}
