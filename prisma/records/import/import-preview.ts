import type { ImportConnection } from "./import-connection";

/** What a run that is ready would book. */
export type ImportPreview = {
  readonly firstDay: string | null;
  readonly lastDay: string | null;
  /** Parcels that stay because they were put right or voided by hand. */
  readonly keptParcels: number;
  readonly orders: number;
  readonly types: readonly {
    readonly itemTypeId: string;
    readonly name: string;
    readonly isNew: boolean;
    readonly parcels: number;
    readonly pieces: number;
    /** Parcels of new or changed fate whose bill is empty. */
    readonly withoutUse: number;
  }[];
  readonly parcels: readonly {
    readonly fate: string;
    readonly packedOn: string;
    readonly orderRef: string | null;
    readonly itemType: string;
    readonly pieces: number;
    readonly style: string;
    readonly lines: number;
  }[];
  readonly newZones: readonly string[];
  readonly newCartons: readonly string[];
};

/**
 * What a run would book, from what it staged.
 *
 * @param db the import's connection
 * @param runId the run
 * @param shown how many parcels to show, changed ones first
 */
export function importPreview(db: ImportConnection, runId: string, shown: number): ImportPreview {
  const heads = db
    .prepare<
      [string],
      { firstDay: string | null; lastDay: string | null; keptParcels: number | null; orders: number }
    >(
      `SELECT MIN("packedOn") AS "firstDay", MAX("packedOn") AS "lastDay", SUM("fate" = 'kept') AS "keptParcels",
         COUNT(DISTINCT "orderRef") AS "orders" FROM "StagedParcel" WHERE "runId" = ?`,
    )
    .get(runId);
  const types = db
    .prepare<[string], Omit<ImportPreview["types"][number], "isNew"> & { isNew: number }>(TYPES_SQL)
    .all(runId)
    .map((row) => ({ ...row, isNew: row.isNew === 1 }));
  return {
    firstDay: heads?.firstDay ?? null,
    lastDay: heads?.lastDay ?? null,
    keptParcels: heads?.keptParcels ?? 0,
    orders: heads?.orders ?? 0,
    types,
    parcels: db.prepare<[string, number], ImportPreview["parcels"][number]>(PARCELS_SQL).all(runId, shown),
    newZones: newNames(db, runId, "zoneId", "Zone", "zone"),
    newCartons: newNames(db, runId, "cartonId", "Supply", "carton"),
  };
}

const NAME_SQL = (id: string) => `COALESCE((SELECT t."name" FROM "ItemType" t WHERE t."id" = ${id}),
  (SELECT MIN(v."text") FROM "ImportValue" v WHERE v."kind" = 'item-type' AND v."target" = ${id}), ${id})`;

const TYPES_SQL = `
  SELECT s."leadingItemTypeId" AS "itemTypeId", ${NAME_SQL('s."leadingItemTypeId"')} AS "name",
    NOT EXISTS (SELECT 1 FROM "ItemType" t WHERE t."id" = s."leadingItemTypeId") AS "isNew",
    COUNT(*) AS "parcels", SUM(s."pieces") AS "pieces",
    SUM(s."fate" IN ('new', 'changed') AND NOT EXISTS (
      SELECT 1 FROM "StagedUse" u WHERE u."runId" = s."runId" AND u."parcelKey" = s."parcelKey")) AS "withoutUse"
  FROM "StagedParcel" s WHERE s."runId" = ? GROUP BY s."leadingItemTypeId" ORDER BY "parcels" DESC, "name"`;

const PARCELS_SQL = `
  SELECT s."fate", s."packedOn", s."orderRef", ${NAME_SQL('s."leadingItemTypeId"')} AS "itemType", s."pieces", s."style",
    (SELECT COUNT(*) FROM "StagedUse" u WHERE u."runId" = s."runId" AND u."parcelKey" = s."parcelKey") AS "lines"
  FROM "StagedParcel" s WHERE s."runId" = ?
  ORDER BY CASE s."fate" WHEN 'changed' THEN 0 WHEN 'new' THEN 1 ELSE 2 END, s."packedOn", s."parcelKey" LIMIT ?`;

function newNames(
  db: ImportConnection,
  runId: string,
  column: string,
  table: string,
  kind: string,
): string[] {
  return db
    .prepare<[string, string], { name: string }>(
      `SELECT COALESCE(MIN(v."text"), r."${column}") AS "name" FROM "StagedRow" r
       LEFT JOIN "ImportValue" v ON v."kind" = ? AND v."target" = r."${column}"
       WHERE r."runId" = ? AND r."${column}" IS NOT NULL AND r."${column}" NOT IN (SELECT "id" FROM "${table}")
       GROUP BY r."${column}" ORDER BY 1`,
    )
    .all(kind, runId)
    .map((row) => row.name);
}
