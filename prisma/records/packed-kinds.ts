import type { CushionStyle } from "#lib/packing/recipe-version";
import { type Day, day } from "#lib/units/day";
import type { Database } from "../client";
import { piecesOfText } from "./pieces-text";

/** Parcels that were packed alike: the same pieces, in the same style, in the same carton. */
export type PackedKind = {
  /** by item type */
  readonly pieces: readonly { readonly itemTypeId: string; readonly pieces: number }[];
  readonly style: CushionStyle;
  /** the outer carton; null for an odd one that is in no list */
  readonly cartonId: string | null;
  readonly parcels: number;
  readonly lastPackedOn: Day;
};

type Row = {
  readonly pieces: string;
  readonly style: string;
  readonly cartonId: string | null;
  readonly parcels: number | bigint;
  readonly lastPackedOn: string;
};

/**
 * What was packed in a span of days, alike parcels together. Voided and unusual ones are left out, those in a box in a
 * box, whose pieces say nothing of the outer carton, and those whose carton was cut down.
 *
 * @param db the database
 * @param span first and last day packed
 * @returns the most frequent first
 */
export async function packedKinds(
  db: Database,
  span: { readonly from: Day; readonly to: Day },
): Promise<PackedKind[]> {
  const rows = await db.$queryRaw<Row[]>`
    WITH sent AS (
      SELECT parcel."id", parcel."style", parcel."packedOn",
        (SELECT GROUP_CONCAT("pieces" || ' ' || "itemTypeId", ';' ORDER BY "itemTypeId")
          FROM "ParcelPiece" WHERE "parcelId" = parcel."id") AS "pieces",
        (SELECT "supplyId" FROM "ParcelCarton" WHERE "parcelId" = parcel."id" AND "position" = 0) AS "cartonId"
      FROM "Parcel" parcel
      WHERE parcel."packedOn" BETWEEN ${span.from} AND ${span.to} AND parcel."voidedAt" IS NULL
        AND NOT parcel."unusual"
        AND (SELECT COUNT(*) FROM "ParcelCarton" WHERE "parcelId" = parcel."id") = 1
        AND NOT EXISTS (
          SELECT 1 FROM "ParcelCarton" WHERE "parcelId" = parcel."id" AND "cutHeightUm" IS NOT NULL
        )
    )
    SELECT "pieces", "style", "cartonId", COUNT(*) AS "parcels", MAX("packedOn") AS "lastPackedOn"
    FROM sent WHERE "pieces" IS NOT NULL GROUP BY "pieces", "style", "cartonId"
    ORDER BY COUNT(*) DESC, "pieces", "style", "cartonId"`;
  return rows.map((row) => ({
    pieces: piecesOfText(row.pieces),
    style: row.style as CushionStyle,
    cartonId: row.cartonId,
    parcels: Number(row.parcels),
    lastPackedOn: day(row.lastPackedOn),
  }));
}
