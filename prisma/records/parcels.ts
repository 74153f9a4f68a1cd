import { day } from "#lib/units/day";
import { endOfDay, instant, shopDay, startOfDay } from "#lib/units/instant";
import { type Database, inTransaction, type Transaction } from "../client";
import { insertRows } from "./insert-rows";
import { appendMovements, type MovementDraft, type Recorder } from "./ledger";
import { type ParcelBody, parcelBodyHash } from "./parcel-body";
import { addParcelsToDays } from "./parcel-day";
import { type OrderSeen, parcelDrafts, saveParcelParts } from "./parcel-parts";
import { type ShopTerms, shopIn } from "./shop";
import { unknownReference } from "./unknown-reference";

/** What came of recording a parcel. */
export type ParcelOutcome =
  | {
      readonly kind: "recorded" | "already-recorded";
      readonly parcelId: string;
      /** Cost of the materials, 1/10,000 minor unit; null where a supply's cost is not known. */
      readonly costValue: number | null;
      readonly warnings: readonly OrderSeen[];
    }
  | { readonly kind: "conflict"; readonly parcelId: string }
  | { readonly kind: "ask-count-order"; readonly supplies: readonly string[] }
  | { readonly kind: "unknown"; readonly field: string; readonly id: string };

/**
 * Records a parcel: its pieces, cartons and orders, and one movement a line of its bill.
 *
 * @param db the database
 * @param body the parcel; its id is the key, and the same key with the same body is the same parcel
 * @param by who records, and when
 * @returns recorded, already recorded, or what is wrong; then nothing is written
 */
export async function recordParcel(db: Database, body: ParcelBody, by: Recorder): Promise<ParcelOutcome> {
  return inTransaction(db, (tx) => recordParcelIn(tx, body, by, null));
}

/** Where a parcel came from: an import's source and its own reference. */
export type ParcelSource = { readonly source: string; readonly sourceRef: string };

/**
 * As `recordParcel`, inside a transaction that the caller holds.
 *
 * @param tx the open transaction
 * @param body the parcel
 * @param by who records, and when
 * @param origin the import that it came from, or null
 */
export async function recordParcelIn(
  tx: Transaction,
  body: ParcelBody,
  by: Recorder,
  origin: ParcelSource | null,
): Promise<ParcelOutcome> {
  const bodyHash = parcelBodyHash(body);
  const [known] = await tx.$queryRaw<{ bodyHash: string }[]>`
    SELECT "bodyHash" FROM "Parcel" WHERE "id" = ${body.id}`;
  if (known !== undefined) {
    if (known.bodyHash !== bodyHash) return { kind: "conflict", parcelId: body.id };
    return {
      kind: "already-recorded",
      parcelId: body.id,
      costValue: await costOf(tx, body.id),
      warnings: [],
    };
  }
  const unknown = await unknownReference(tx, body);
  if (unknown !== null) return unknown;
  const shop = await shopIn(tx);
  const when = await effectiveAt(tx, { body, shop, by });
  if (when.kind === "ask-count-order") return when;
  const { value, warnings } = await recordNewParcels(tx, [{ body, at: when.at, origin }], { shop, by });
  return { kind: "recorded", parcelId: body.id, costValue: value === null ? null : -Number(value), warnings };
}

/** A parcel that is known to be new and to name nothing unknown, and the instant at which it takes effect. */
export type NewParcel = {
  readonly body: ParcelBody;
  readonly at: string;
  readonly origin: ParcelSource | null;
};

/**
 * Writes new parcels with all that belongs to them: pieces, cartons, orders, movements and roll-ups.
 *
 * @param tx the open transaction
 * @param parcels in the order of packing
 * @param terms the shop, and who records when
 * @returns value of all their movements, 1/10,000 minor unit (below 0, as stock goes out; null if any is
 * unknown), and the order numbers that earlier parcels already carry
 */
export async function recordNewParcels(
  tx: Transaction,
  parcels: readonly NewParcel[],
  { shop, by }: { readonly shop: ShopTerms; readonly by: Recorder },
): Promise<{ value: bigint | null; warnings: OrderSeen[] }> {
  await insertRows(
    tx,
    "Parcel",
    parcels.map(({ body, at, origin }) => ({
      ...parcelColumns(body),
      source: origin?.source ?? null,
      sourceRef: origin?.sourceRef ?? null,
      id: body.id,
      bodyHash: parcelBodyHash(body),
      effectiveAt: at,
      recordedAt: by.now,
      recordedBy: by.device,
    })),
  );
  const bodies = parcels.map(({ body }) => body);
  const warnings = await saveParcelParts(tx, bodies, shop);
  const drafts = parcels.flatMap(({ body, at }) => parcelDrafts(body, at));
  const value = await appendMovements(tx, drafts, by);
  await addParcelsToDays(tx, bodies, 1);
  return { value, warnings };
}

/** The parcel's own columns that follow from its body. */
export function parcelColumns(body: ParcelBody) {
  return {
    packedOn: body.packedOn,
    style: body.style,
    zoneId: body.zoneId,
    scaleMg: body.scaleMg,
    scaleTyped: body.scaleTyped,
    promisedMg: body.promised?.mg ?? null,
    promisedTyped: body.promised?.typed ?? null,
    postageMinor: body.postageMinor,
    postedOn: body.postedOn,
    unusual: body.unusual,
    note: body.note,
  };
}

/**
 * When a parcel takes effect: now if it was packed today; else at the end of its day, or at its start
 * where the packer says that a count on that day came later.
 *
 * @returns the instant, or the supplies counted on that day if the packer has to be asked
 */
export async function effectiveAt(
  tx: Transaction,
  {
    body,
    shop: { timeZone },
    by,
  }: { readonly body: ParcelBody; readonly shop: ShopTerms; readonly by: Recorder },
): Promise<{ kind: "at"; at: string } | { kind: "ask-count-order"; supplies: string[] }> {
  if (shopDay(instant(by.now), timeZone) === body.packedOn) return { kind: "at", at: by.now };
  if (body.countedSameDay === "before") return { kind: "at", at: startOfDay(day(body.packedOn), timeZone) };
  if (body.countedSameDay === undefined) {
    const supplyIds = parcelDrafts(body, "").map((draft) => draft.supplyId);
    const counts = await tx.count.findMany({
      where: { supplyId: { in: supplyIds }, countedDay: body.packedOn },
      distinct: ["supplyId"],
      select: { supplyId: true },
    });
    if (counts.length > 0)
      return { kind: "ask-count-order", supplies: counts.map((count) => count.supplyId) };
  }
  return { kind: "at", at: endOfDay(day(body.packedOn), timeZone) };
}

/** Cost of a parcel's standing bill, 1/10,000 minor unit, or null where a line's cost is not known. */
async function costOf(tx: Transaction, parcelId: string): Promise<number | null> {
  const rows = await standingMovements(tx, parcelId);
  return rows.reduce<number | null>(
    (sum, row) => (sum === null || row.value === null ? null : sum - Number(row.value)),
    0,
  );
}

/** A parcel's movements that no reversal has taken back. */
export async function standingMovements(tx: Transaction, parcelId: string) {
  // By the parcel alone: asked for lines that reverse nothing, SQLite walks the index of all of them.
  const movements = await tx.movement.findMany({
    where: { parcelId },
    orderBy: { id: "asc" },
  });
  const reversed = new Set(movements.map((movement) => movement.reversesId));
  return movements.filter(
    ({ id, cause, reversesId }) => cause === "packed" && reversesId === null && !reversed.has(id),
  );
}

type StandingMovement = Awaited<ReturnType<typeof standingMovements>>[number];

/** The movement that takes another one back, effective when that one was. */
export function reversalOf(
  movement: Omit<StandingMovement, "id"> & { id: number },
  words: string | null,
): MovementDraft {
  return {
    supplyId: movement.supplyId,
    amount: -movement.amount,
    value: movement.value === null ? null : -movement.value,
    cause: movement.cause as MovementDraft["cause"],
    unusual: movement.unusual,
    effectiveAt: movement.effectiveAt,
    effectiveDay: movement.effectiveDay,
    reversesId: movement.id,
    words,
    ...(movement.parcelId === null ? {} : { parcelId: movement.parcelId }),
  };
}
