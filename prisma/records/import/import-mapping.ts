import type { ImportConnection } from "./import-connection";
import type { ImportField } from "./import-problem";

/** How days are written in the file. */
export type DayFormat = "YYYY-MM-DD" | "DD.MM.YYYY" | "DD/MM/YYYY" | "MM/DD/YYYY";

/** The unit of scale weights that stand without one. */
export type ScaleUnit = "g" | "kg" | "oz" | "lb";

/** Which column stands for which field. Columns that no field names are dropped. */
export type ImportMapping = {
  /** Column name by field. */
  readonly columns: Readonly<Partial<Record<ImportField, string>>>;
  /** Null: not chosen, and the file does not say it by itself. */
  readonly dayFormat: DayFormat | null;
  readonly scaleUnit: ScaleUnit;
};

type MappingRow = { readonly column: string; readonly field: string };

/**
 * The mapping that was used for the last file with this header line, or null. The day's format and the
 * scale's unit are kept behind their field's name ("packed-day:DD.MM.YYYY").
 */
export function rememberedMapping(db: ImportConnection, headerHash: string): ImportMapping | null {
  const rows = db
    .prepare<[string], MappingRow>(`SELECT "column", "field" FROM "ImportMapping" WHERE "headerHash" = ?`)
    .all(headerHash);
  if (rows.length === 0) return null;
  const columns: Partial<Record<ImportField, string>> = {};
  let dayFormat: DayFormat | null = null;
  let scaleUnit: ScaleUnit = "g";
  for (const row of rows) {
    const [field, detail] = row.field.split(":");
    columns[field as ImportField] = row.column;
    if (field === "packed-day" && detail !== undefined) dayFormat = detail as DayFormat;
    if (field === "scale" && detail !== undefined) scaleUnit = detail as ScaleUnit;
  }
  return { columns, dayFormat, scaleUnit };
}

/** Keeps a mapping for the next file with this header line. */
export function rememberMapping(db: ImportConnection, headerHash: string, mapping: ImportMapping): void {
  const insert = db.prepare(`INSERT INTO "ImportMapping" ("headerHash", "column", "field") VALUES (?, ?, ?)`);
  db.transaction(() => {
    db.prepare(`DELETE FROM "ImportMapping" WHERE "headerHash" = ?`).run(headerHash);
    for (const [field, column] of Object.entries(mapping.columns)) {
      insert.run(headerHash, column, fieldText(field, mapping));
    }
  }).immediate();
}

function fieldText(field: string, mapping: ImportMapping): string {
  if (field === "packed-day" && mapping.dayFormat !== null) return `${field}:${mapping.dayFormat}`;
  return field === "scale" ? `${field}:${mapping.scaleUnit}` : field;
}
