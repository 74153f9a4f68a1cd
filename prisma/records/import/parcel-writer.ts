import { createHash } from "node:crypto";
import type { ImportConnection } from "./import-connection";
import { requireReading } from "./import-runs";
import { importedHash, type ParcelOfRows } from "./staged-parcel";

/** One line of a worked-out bill; the amount is what was used. */
export type UseLine = {
  readonly supplyId: string;
  readonly amount: number;
  readonly recipeStepId: string | null;
  readonly typedValue: string | null;
  readonly typedUnit: string | null;
};

/** A parcel with its bill, ready to be staged. */
export type WorkedOut = {
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

/**
 * Writes worked-out parcels beside the ledger, one short transaction a call, each with what would become of
 * it: new, same, changed, or kept because it was put right or voided by hand.
 *
 * @param db the import's connection
 * @param runId the run
 * @param source name of where the file comes from
 * @returns the writer; it throws ImportEndedMeanwhile where the run is no longer being read
 */
export function parcelWriter(db: ImportConnection, runId: string, source: string) {
  const known = db.prepare<[string, string], Before>(
    `SELECT "id", "bodyHash", "packedOn", "effectiveAt", CASE WHEN "voidedAt" IS NOT NULL OR "bodyHash" NOT LIKE 'import:%' THEN 'kept' ELSE '' END
       AS "fate" FROM "Parcel" WHERE "source" = ? AND "sourceRef" = ?`,
  );
  const insertParcel = db.prepare(
    `INSERT INTO "StagedParcel" ("runId", "parcelKey", "fate", "parcelId", "bodyHash", "packedOn", "effectiveAt", "style",
       "zoneId", "cartonId", "scaleMg", "scaleTyped", "postageMinor", "unusual", "orderRef", "leadingItemTypeId", "pieces")
     VALUES (:runId, :key, :fate, :id, :hash, :packedOn, :effectiveAt, :style, :zoneId, :cartonId, :scaleMg, :scaleTyped,
       :postageMinor, :unusual, :orderRef, :leading, :pieces)`,
  );
  const nameRow = db.prepare(`UPDATE "StagedRow" SET "parcelKey" = ? WHERE "runId" = ? AND "line" = ?`);
  const writeUse = stagedUseWriter(db, runId);
  const writeOne = (entry: WorkedOut, hash: string): void => {
    const { key, parcel } = entry;
    const before = known.get(source, key);
    const fate = fateOf(before, hash);
    insertParcel.run({
      ...parcel,
      runId,
      key,
      fate,
      hash,
      id: before?.id ?? importedParcelId(source, key),
      // A parcel that stays on its day keeps the instant at which it took effect.
      effectiveAt: before?.packedOn === parcel.packedOn ? before.effectiveAt : entry.effectiveAt,
      style: entry.style,
      cartonId: entry.cartonId,
      unusual: parcel.unusual ? 1 : 0,
      leading: leadingPart(parcel.pieces),
      pieces: parcel.pieces.reduce((sum, part) => sum + part.pieces, 0),
    });
    for (const line of entry.lines) nameRow.run(key, runId, line);
    if (fate === "new" || fate === "changed") writeUse(key, entry.uses);
  };
  return (parcels: readonly WorkedOut[]): void => {
    const hashed = parcels.map((entry) => ({ entry, hash: importedHash(entry.parcel) }));
    db.transaction(() => {
      requireReading(db, runId);
      for (const { entry, hash } of hashed) writeOne(entry, hash);
    }).immediate();
  };
}

function stagedUseWriter(
  db: ImportConnection,
  runId: string,
): (key: string, uses: readonly UseLine[]) => void {
  const insert = db.prepare(
    `INSERT INTO "StagedUse" ("runId", "id", "parcelKey", "supplyId", "amount", "recipeStepId", "typedValue", "typedUnit")
     VALUES (?, ?, ?, ?, ?, ?, ?, ?)`,
  );
  let id = 0;
  return (key, uses) => {
    for (const { supplyId, amount, recipeStepId, typedValue, typedUnit } of uses) {
      id += 1;
      insert.run(runId, id, key, supplyId, amount, recipeStepId, typedValue, typedUnit);
    }
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
  const hex = createHash("sha256")
    .update(JSON.stringify([source, key]))
    .digest("hex");
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20, 32)].join(
    "-",
  );
}
