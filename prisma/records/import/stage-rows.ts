import { createHash } from "node:crypto";
import type { Day } from "#lib/units/day";
import type { ImportConnection } from "./import-connection";
import { requireReading } from "./import-runs";

/** A row of the file, understood: ids in place of texts, numbers in place of figures. */
export type ImportedRow = {
  readonly line: number;
  readonly packedOn: Day;
  readonly orderRef: string | null;
  readonly itemTypeId: string;
  readonly pieces: number;
  readonly zoneId: string | null;
  readonly style: string | null;
  readonly cartonId: string | null;
  readonly scaleMg: number | null;
  readonly scaleTyped: string | null;
  readonly postageMinor: number | null;
  readonly unusual: boolean;
};

/** Rows that are not yet part of a parcel have keys that begin with this, behind all keys of parcels. */
export const LOOSE = "~";
/** Parts a loose key; no field of a file can hold it. */
export const KEY_SEPARATOR = "\u001f";

/**
 * Puts rows aside, in one short transaction. Rows of the same order and day get the same loose key; a row
 * without an order gets one from its content.
 *
 * @param db the import's connection
 * @param runId the run
 * @param rows the next rows of the file
 * @throws ImportEndedMeanwhile where the run is no longer being read
 */
export function stageRows(db: ImportConnection, runId: string, rows: readonly ImportedRow[]): void {
  const insert = db.prepare(
    `INSERT INTO "StagedRow" ("runId", "line", "parcelKey", "packedOn", "orderRef", "itemTypeId", "pieces", "zoneId",
       "style", "cartonId", "scaleMg", "scaleTyped", "postageMinor", "unusual")
     VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)`,
  );
  const keyed = rows.map((row) => ({ row, key: looseKey(row) }));
  db.transaction(() => {
    requireReading(db, runId);
    for (const { row, key } of keyed) {
      insert.run(
        runId,
        row.line,
        key,
        row.packedOn,
        row.orderRef,
        row.itemTypeId,
        row.pieces,
        row.zoneId,
        row.style,
        row.cartonId,
        row.scaleMg,
        row.scaleTyped,
        row.postageMinor,
        row.unusual ? 1 : 0,
      );
    }
  }).immediate();
}

function looseKey(row: ImportedRow): string {
  if (row.orderRef !== null) return [LOOSE, "order", row.orderRef, row.packedOn].join(KEY_SEPARATOR);
  const { line: _line, scaleTyped: _typed, ...content } = row;
  const digest = createHash("sha256")
    .update(JSON.stringify(Object.values(content)))
    .digest("hex");
  return [LOOSE, "row", digest].join(KEY_SEPARATOR);
}
