import { createHash } from "node:crypto";
import type { ImportField, ImportProblem } from "./import-problem";
import type { ImportedRow } from "./stage-rows";

/** The rows of one parcel, put together; what they all leave out is null. */
export type ParcelOfRows = Omit<ImportedRow, "line" | "packedOn" | "itemTypeId" | "pieces"> & {
  readonly packedOn: string;
  readonly pieces: readonly { readonly itemTypeId: string; readonly pieces: number }[];
};

/** Bodies that an import wrote; a parcel whose hash begins otherwise was put right by hand. */
export const IMPORTED_HASH = "import:";

const ONE_PER_PARCEL: readonly {
  field: ImportField;
  key: "zoneId" | "style" | "cartonId" | "scaleMg" | "postageMinor";
}[] = [
  { field: "zone", key: "zoneId" },
  { field: "style", key: "style" },
  { field: "carton", key: "cartonId" },
  { field: "scale", key: "scaleMg" },
  { field: "postage", key: "postageMinor" },
];

/**
 * Puts the rows of a parcel together: pieces add up by item type; what belongs to the whole parcel must be
 * the same on every row that states it.
 *
 * @param rows the parcel's rows in the order of the file, one or more
 * @returns the parcel, and where its rows disagree
 * @throws RangeError without a row
 */
export function parcelOfRows(rows: readonly ImportedRow[]): {
  parcel: ParcelOfRows;
  problems: ImportProblem[];
} {
  const first = rows[0];
  if (first === undefined) throw new RangeError("parcelOfRows requires one row or more, got 0");
  const pieces = new Map<string, number>();
  for (const row of rows) pieces.set(row.itemTypeId, (pieces.get(row.itemTypeId) ?? 0) + row.pieces);
  const stated = <K extends keyof ImportedRow>(key: K) =>
    rows.find((row) => row[key] !== null)?.[key] ?? null;
  const problems = ONE_PER_PARCEL.flatMap(({ field, key }) => {
    const other = rows.find((row) => row[key] !== null && row[key] !== stated(key));
    return other === undefined
      ? []
      : [{ kind: "rows-disagree" as const, line: other.line, field, orderRef: first.orderRef ?? "" }];
  });
  const parcel: ParcelOfRows = {
    packedOn: first.packedOn,
    orderRef: first.orderRef,
    // By item type, the order in which a saved parcel is read back: its leading type is then the same one.
    pieces: [...pieces]
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([itemTypeId, count]) => ({ itemTypeId, pieces: count })),
    zoneId: stated("zoneId"),
    style: stated("style"),
    cartonId: stated("cartonId"),
    scaleMg: stated("scaleMg"),
    scaleTyped: stated("scaleTyped"),
    postageMinor: stated("postageMinor"),
    unusual: rows.some((row) => row.unusual),
  };
  return { parcel, problems };
}

/**
 * The fingerprint of a parcel as the file states it. What the program adds by itself (the bill, the carton
 * of the recipe, the shop's usual style) is left out, so that the same file stays the same parcel.
 *
 * @returns SHA-256 in hex behind `import:`
 */
export function importedHash(parcel: ParcelOfRows): string {
  const pieces = parcel.pieces.map((part) => [part.itemTypeId, part.pieces]);
  const { packedOn, orderRef, zoneId, style, cartonId, scaleMg, postageMinor, unusual } = parcel;
  const content = [packedOn, orderRef, pieces, zoneId, style, cartonId, scaleMg, postageMinor, unusual];
  return IMPORTED_HASH + createHash("sha256").update(JSON.stringify(content)).digest("hex");
}
