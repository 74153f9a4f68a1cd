import { leadingItemType } from "#lib/packing/leading-item-type";
import { CUSHION_STYLES } from "#lib/packing/recipe-version";
import type { PastParcel } from "#lib/packing/weight/weighed-parcel";
import { AMOUNT_PER_UNIT } from "#lib/units/amount";
import { type Day, day } from "#lib/units/day";
import type { Database } from "../client";

/** Older ones say little of how a shop packs now. */
const MOST_PARCELS = 1_000;

type ParcelRow = {
  readonly id: string;
  readonly packedOn: string;
  readonly style: string;
  readonly scaleMg: number | bigint;
  readonly cartonId: string | null;
  /** 1/12,000 mg of all lines, and how many of their supplies have no mass */
  readonly linesMass: number | bigint | null;
  readonly unknown: number | bigint | null;
};

type PieceRow = {
  readonly parcelId: string;
  readonly itemTypeId: string;
  readonly pieces: number | bigint;
  readonly massMg: number | bigint | null;
};

/**
 * The parcels that were weighed last, with what their bill weighs by the masses known today: where a mass was measured
 * since, the past is judged by it too. Unusual and voided parcels, and those with a part of unknown mass, are left out.
 *
 * @param db the database
 * @param before the first day that is not looked at
 * @returns at most a thousand, latest first
 */
export async function weighedParcelsOf(db: Database, before: Day): Promise<PastParcel[]> {
  const parcels = await db.$queryRaw<ParcelRow[]>`
    WITH recent AS (
      SELECT "id", "packedOn", "style", "scaleMg" FROM "Parcel"
      WHERE "scaleMg" IS NOT NULL AND "voidedAt" IS NULL AND NOT "unusual" AND "packedOn" < ${before}
      ORDER BY "packedOn" DESC, "recordedAt" DESC LIMIT ${MOST_PARCELS}
    )
    SELECT recent.*, carton."supplyId" AS "cartonId",
      SUM(-movement."amount" * supply."massMg") AS "linesMass", SUM(supply."massMg" IS NULL) AS "unknown"
    FROM recent
    JOIN "ParcelCarton" carton ON carton."parcelId" = recent."id" AND carton."position" = 0
    JOIN "Movement" movement ON movement."parcelId" = recent."id" AND movement."cause" = 'packed'
    JOIN "Supply" supply ON supply."id" = movement."supplyId"
    WHERE NOT EXISTS (SELECT 1 FROM "ParcelCarton" odd WHERE odd."parcelId" = recent."id" AND odd."supplyId" IS NULL)
    GROUP BY recent."id"
    ORDER BY recent."packedOn" DESC`;
  if (parcels.length === 0) return [];
  const oldest = parcels.at(-1)?.packedOn ?? before;
  const pieces = await db.$queryRaw<PieceRow[]>`
    SELECT piece."parcelId", piece."itemTypeId", piece."pieces", type."massMg"
    FROM "ParcelPiece" piece
    JOIN "Parcel" parcel ON parcel."id" = piece."parcelId"
    JOIN "ItemType" type ON type."id" = piece."itemTypeId"
    WHERE parcel."scaleMg" IS NOT NULL AND parcel."packedOn" >= ${oldest} AND parcel."packedOn" < ${before}`;
  const byParcel = new Map<string, PieceRow[]>();
  for (const piece of pieces) {
    const own = byParcel.get(piece.parcelId);
    if (own === undefined) byParcel.set(piece.parcelId, [piece]);
    else own.push(piece);
  }
  return parcels.flatMap((row) => pastParcel(row, byParcel.get(row.id) ?? []));
}

function pastParcel(row: ParcelRow, pieces: readonly PieceRow[]): PastParcel[] {
  if (row.linesMass === null || Number(row.unknown) > 0) return [];
  let mass = Number(row.linesMass) / AMOUNT_PER_UNIT;
  for (const piece of pieces) {
    if (piece.massMg === null) return [];
    mass += Number(piece.pieces) * Number(piece.massMg);
  }
  const counted = pieces.map(({ itemTypeId, pieces: count }) => ({ itemTypeId, pieces: Number(count) }));
  return [
    {
      packedOn: day(row.packedOn),
      itemTypeId: leadingItemType(counted),
      cartonId: row.cartonId,
      style: CUSHION_STYLES.find((style) => style === row.style) ?? "mixed",
      predictedMg: Math.round(mass),
      scaleMg: Number(row.scaleMg),
      unusual: false,
    },
  ];
}
