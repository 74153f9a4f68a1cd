import { billOfMaterials } from "#lib/packing/bill";
import { type RecipeVersion, recipeOn } from "#lib/packing/recipe-version";
import { AMOUNT_PER_UNIT } from "#lib/units/amount";
import { day } from "#lib/units/day";
import { endOfDay } from "#lib/units/instant";
import { groupedBy } from "./grouped-by";
import type { ImportConnection } from "./import-connection";
import type { ImportProblem } from "./import-problem";
import { parcelWriter, type UseLine, type WorkedOut } from "./parcel-writer";
import { recipeBook } from "./recipe-book";
import { type ImportedRow, KEY_SEPARATOR, LOOSE } from "./stage-rows";
import { type ParcelOfRows, parcelOfRows } from "./staged-parcel";

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
      effectiveAt: earlier(end, terms.now),
      ...billOf(parcel, style, book),
    };
  };
}

function billOf(parcel: ParcelOfRows, style: string, book: Map<string, RecipeVersion[]>) {
  const parts = parcel.pieces.flatMap((part) => {
    const versions = book.get(`${part.itemTypeId}/${style}`);
    const recipe =
      versions?.[0] && recipeOn(versions, part.itemTypeId, versions[0].style, day(parcel.packedOn));
    return recipe ? [{ ...part, recipe }] : [];
  });
  const named = parcel.cartonId === null ? {} : { carton: { supplyId: parcel.cartonId } };
  const bill = parts.length === 0 ? null : billOfMaterials({ parts, ...named });
  const cartonId = parcel.cartonId ?? bill?.cartons[0] ?? null;
  const lines: UseLine[] = (bill?.lines ?? []).filter((line) => line.amount > 0);
  const carton = {
    supplyId: cartonId ?? "",
    amount: AMOUNT_PER_UNIT,
    recipeStepId: null,
    typedValue: "1",
    typedUnit: "each",
  };
  return { cartonId, uses: cartonId === null ? lines : [...lines, carton] };
}

/** Instants compare as text. */
function earlier(first: string, second: string): string {
  if (first < second) return first;
  return second;
}
