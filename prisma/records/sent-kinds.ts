import type { CushionStyle } from "#lib/packing/recipe-version";
import type { Day } from "#lib/units/day";
import type { Database } from "../client";
import { piecesOfText } from "./pieces-text";

/** Parcels sent alike: the same pieces in the same style to the same zone. */
export type SentRow = {
  /** by item type */
  readonly pieces: readonly { readonly itemTypeId: string; readonly pieces: number }[];
  readonly style: CushionStyle;
  /** null where it was not noted */
  readonly zoneId: string | null;
  readonly parcels: number;
};

type Row = {
  readonly pieces: string;
  readonly style: string;
  readonly zoneId: string | null;
  readonly parcels: number | bigint;
};

/**
 * What was sent in a span of days, alike parcels together. Voided and unusual ones are left out.
 *
 * @param db the database
 * @param span first and last day packed
 * @returns the most frequent first
 */
export async function sentKinds(
  db: Database,
  span: { readonly from: Day; readonly to: Day },
): Promise<SentRow[]> {
  const rows = await db.$queryRaw<Row[]>`
    WITH sent AS (
      SELECT parcel."id", parcel."style", parcel."zoneId",
        GROUP_CONCAT(piece."pieces" || ' ' || piece."itemTypeId", ';' ORDER BY piece."itemTypeId") AS "pieces"
      FROM "Parcel" parcel JOIN "ParcelPiece" piece ON piece."parcelId" = parcel."id"
      WHERE parcel."packedOn" BETWEEN ${span.from} AND ${span.to} AND parcel."voidedAt" IS NULL
        AND NOT parcel."unusual"
      GROUP BY parcel."id"
    )
    SELECT "pieces", "style", "zoneId", COUNT(*) AS "parcels" FROM sent GROUP BY "pieces", "style", "zoneId"
    ORDER BY COUNT(*) DESC, "pieces", "style", "zoneId"`;
  return rows.map((row) => ({
    pieces: piecesOfText(row.pieces),
    style: row.style as CushionStyle,
    zoneId: row.zoneId,
    parcels: Number(row.parcels),
  }));
}
