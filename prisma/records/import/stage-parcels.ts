import { createHash } from "node:crypto";
import { billOfMaterials } from "#lib/packing/bill";
import { recipeOn, type RecipeVersion } from "#lib/packing/recipe-version";
import { AMOUNT_PER_UNIT } from "#lib/units/amount";
import { day } from "#lib/units/day";
import { endOfDay } from "#lib/units/instant";
import { groupedBy } from "./grouped-by";
import type { ImportConnection } from "./import-connection";
import type { ImportProblem } from "./import-problem";
import { recipeBook } from "./recipe-book";
import { type ImportedRow, KEY_SEPARATOR, LOOSE } from "./stage-rows";
import { importedHash, type ParcelOfRows, parcelOfRows } from "./staged-parcel";

type StagedRowRow = Omit<ImportedRow, "unusual"> & { parcelKey: string; unusual: number };
type Group = { readonly key: string; readonly rows: readonly StagedRowRow[] };

/** What parcels are worked out with. */
export type StageTerms = {
  readonly source: string;
  readonly timeZone: string;
  readonly defaultStyle: string;
  /** Instant of the import: no parcel takes effect later. */
  readonly now: string;
};

type UseLine = {
  readonly supplyId: string;
  readonly amount: number;
  readonly recipeStepId: string | null;
  readonly typedValue: string | null;
  readonly typedUnit: string | null;
};

type WorkedOut = {
  readonly key: string;
  readonly lines: readonly number[];
  readonly parcel: ParcelOfRows;
  readonly style: string;
  readonly cartonId: string | null;
  readonly effectiveAt: string;
  readonly uses: readonly UseLine[];
};

/** A parcel of the same key that is already recorded. */
type Before = { id: string; fate: string; bodyHash: string; packedOn: string; effectiveAt: string };

const ROWS_PER_CHUNK = 600;

/**
 * Makes parcels with their bills of materials of the rows that a run put aside, chunk by chunk: the bills
 * are worked out while the database is free, and written in short transactions.
 *
 * @param db the import's connection
 * @param runId the run
 * @param terms source, time zone, usual style and instant
 * @param pause awaited between two chunks
 * @returns where the rows of an order disagree
 */
export async function stageParcels(
  db: ImportConnection,
  runId: string,
  terms: StageTerms,
  pause: () => Promise<void>,
): Promise<ImportProblem[]> {
  const workOut = parcelWorker(recipeBook(db), terms);
  const write = parcelWriter(db, runId, terms.source);
  const problems: ImportProblem[] = [];
  for await (const groups of looseGroups(db, runId)) {
    const parcels = groups.map((group) => workOut(group, problems));
    if (problems.length === 0) write(parcels);
    await pause();
  }
  return problems;
}

/** Groups of loose rows, by key; a group is whole however many rows it has. */
async function* looseGroups(db: ImportConnection, runId: string): AsyncGenerator<Group[]> {
  const next = db.prepare<[string, string, string, number], StagedRowRow>(
    `SELECT "parcelKey", "line", "packedOn", "orderRef", "itemTypeId", "pieces", "zoneId", "style", "cartonId",
       "scaleMg", "scaleTyped", "postageMinor", "unusual"
     FROM "StagedRow" WHERE "runId" = ? AND "parcelKey" >= ? AND ("parcelKey", "line") > (?, ?)
     ORDER BY "parcelKey", "line" LIMIT ${ROWS_PER_CHUNK}`,
  );
  let open: StagedRowRow[] = [];
  let last = { key: LOOSE, line: 0 };
  let rows = next.all(runId, LOOSE, last.key, last.line);
  while (rows.length > 0) {
    const all = [...open, ...rows];
    const end = all.at(-1);
    if (end !== undefined) last = { key: end.parcelKey, line: end.line };
    const closed = all.filter((row) => row.parcelKey !== last.key);
    open = all.filter((row) => row.parcelKey === last.key);
    if (closed.length > 0) yield groupsOf(closed);
    rows = next.all(runId, LOOSE, last.key, last.line);
  }
  if (open.length > 0) yield groupsOf(open);
}

/** An order's rows of one day are one parcel; each row without an order is one of its own. */
function groupsOf(rows: readonly StagedRowRow[]): Group[] {
  return [...groupedBy(rows, (row) => row.parcelKey)].flatMap(([key, group]) =>
    group[0]?.orderRef === null ? group.map((row) => ({ key, rows: [row] })) : [{ key, rows: group }],
  );
}

/** Names parcels one after the other: the n-th day of an order, the n-th row of the same content. */
function parcelNamer(): (group: Group) => string {
  let before = "";
  let times = 0;
  return ({ key }) => {
    const [, kind = "", name = ""] = key.split(KEY_SEPARATOR);
    const same = `${kind}:${name}`;
    times = same === before ? times + 1 : 1;
    before = same;
    return `${kind}:${times}:${name}`;
  };
}

function parcelWorker(book: Map<string, RecipeVersion[]>, terms: StageTerms) {
  const nameOf = parcelNamer();
  const ends = new Map<string, string>();
  return (group: Group, problems: ImportProblem[]): WorkedOut => {
    const rows = group.rows.map((row) => ({ ...row, unusual: row.unusual === 1 }));
    const { parcel, problems: found } = parcelOfRows(rows);
    problems.push(...found);
    const style = parcel.style ?? terms.defaultStyle;
    const end = ends.get(parcel.packedOn) ?? endOfDay(day(parcel.packedOn), terms.timeZone);
    ends.set(parcel.packedOn, end);
    return {
      key: nameOf(group),
      lines: rows.map((row) => row.line),
      parcel,
      style,
      effectiveAt: end < terms.now ? end : terms.now,
      ...billOf(parcel, style, book),
    };
  };
}

function billOf(parcel: ParcelOfRows, style: string, book: Map<string, RecipeVersion[]>) {
  const parts = parcel.pieces.flatMap((part) => {
    const versions = book.get(`${part.itemTypeId}/${style}`);
    const recipe = versions?.[0] && recipeOn(versions, part.itemTypeId, versions[0].style, day(parcel.packedOn));
    return recipe ? [{ ...part, recipe }] : [];
  });
  const named = parcel.cartonId === null ? {} : { carton: { supplyId: parcel.cartonId } };
  const bill = parts.length === 0 ? null : billOfMaterials({ parts, ...named });
  const cartonId = parcel.cartonId ?? bill?.cartons[0] ?? null;
  const lines: UseLine[] = (bill?.lines ?? []).filter((line) => line.amount > 0);
  const carton = { supplyId: cartonId ?? "", amount: AMOUNT_PER_UNIT, recipeStepId: null, typedValue: "1", typedUnit: "each" };
  return { cartonId, uses: cartonId === null ? lines : [...lines, carton] };
}

function parcelWriter(db: ImportConnection, runId: string, source: string) {
  const known = db.prepare<[string, string], Before>(
    `SELECT "id", "bodyHash", "packedOn", "effectiveAt", CASE WHEN "voidedAt" IS NOT NULL OR "bodyHash" NOT LIKE 'import:%' THEN 'kept' ELSE '' END
       AS "fate" FROM "Parcel" WHERE "source" = ? AND "sourceRef" = ?`,
  );
  const insertParcel = db.prepare(
    `INSERT INTO "StagedParcel" ("runId", "parcelKey", "fate", "parcelId", "bodyHash", "packedOn", "effectiveAt", "style",
       "zoneId", "cartonId", "scaleMg", "scaleTyped", "postageMinor", "unusual", "orderRef", "leadingItemTypeId", "pieces")
     VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)`,
  );
  const insertUse = db.prepare(
    `INSERT INTO "StagedUse" ("runId", "id", "parcelKey", "supplyId", "amount", "recipeStepId", "typedValue", "typedUnit")
     VALUES (?, ?, ?, ?, ?, ?, ?, ?)`,
  );
  const nameRow = db.prepare(`UPDATE "StagedRow" SET "parcelKey" = ? WHERE "runId" = ? AND "line" = ?`);
  let useId = 0;
  return (parcels: readonly WorkedOut[]): void => {
    const hashed = parcels.map((entry) => ({ ...entry, hash: importedHash(entry.parcel) }));
    db.transaction(() => {
      for (const { key, lines, parcel, style, cartonId, effectiveAt, uses, hash } of hashed) {
        const before = known.get(source, key);
        const fate = fateOf(before, hash);
        // A parcel that stays on its day keeps the instant at which it took effect.
        const takesEffect = before?.packedOn === parcel.packedOn ? before.effectiveAt : effectiveAt;
        const leading = leadingPart(parcel.pieces);
        const total = parcel.pieces.reduce((sum, part) => sum + part.pieces, 0);
        insertParcel.run(
          runId, key, fate, before?.id ?? importedParcelId(source, key), hash, parcel.packedOn, takesEffect, style,
          parcel.zoneId, cartonId, parcel.scaleMg, parcel.scaleTyped, parcel.postageMinor, parcel.unusual ? 1 : 0,
          parcel.orderRef, leading, total,
        );
        for (const line of lines) nameRow.run(key, runId, line);
        if (fate === "new" || fate === "changed") {
          for (const use of uses) {
            useId += 1;
            insertUse.run(runId, useId, key, use.supplyId, use.amount, use.recipeStepId, use.typedValue, use.typedUnit);
          }
        }
      }
    }).immediate();
  };
}

function fateOf(before: Before | undefined, hash: string): string {
  if (before === undefined) return "new";
  if (before.fate === "kept") return "kept";
  return before.bodyHash === hash ? "same" : "changed";
}

function leadingPart(pieces: ParcelOfRows["pieces"]): string {
  const most = Math.max(...pieces.map((part) => part.pieces));
  return pieces.find((part) => part.pieces === most)?.itemTypeId ?? "";
}

/** The id of an imported parcel follows from its key, so that one key can never be two parcels. */
function importedParcelId(source: string, key: string): string {
  const hex = createHash("sha256").update(JSON.stringify([source, key])).digest("hex");
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20, 32)].join("-");
}
