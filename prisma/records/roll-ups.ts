import { type Database, inTransaction, type Transaction } from "../client";
import { Prisma } from "../generated/client";
import { staleForecasts } from "./stale-forecasts";

// A parcel counts once, under the item type with most pieces (the first by name among equals).
const PARCEL_DAYS = Prisma.sql`
  SELECT p."packedOn" AS "day", pp."itemTypeId" AS "itemTypeId", p."style" AS "style",
    COALESCE(pc."supplyId", '') AS "cartonId", COALESCE(p."zoneId", '') AS "zoneId", p."unusual" AS "unusual",
    SUM(CASE WHEN pp."itemTypeId" = (
      SELECT q."itemTypeId" FROM "ParcelPiece" q WHERE q."parcelId" = p."id"
      ORDER BY q."pieces" DESC, q."itemTypeId" ASC LIMIT 1) THEN 1 ELSE 0 END) AS "parcels",
    SUM(pp."pieces") AS "pieces"
  FROM "Parcel" p
  JOIN "ParcelPiece" pp ON pp."parcelId" = p."id"
  LEFT JOIN "ParcelCarton" pc ON pc."parcelId" = p."id" AND pc."position" = 0
  WHERE p."voidedAt" IS NULL
  GROUP BY 1, 2, 3, 4, 5, 6`;

type Row = { readonly key: string; readonly amount: bigint; readonly value: bigint };

/** Whether the kept roll-ups and on hand equal what the ledger and the parcels add up to. */
export type RollUpProof = { readonly equal: boolean; readonly differences: readonly string[] };

/**
 * Adds the whole ledger up anew and holds it against on hand and both roll-ups.
 *
 * @returns equal, or each difference in words for the log
 */
export async function proveRollUps(db: Database): Promise<RollUpProof> {
  return db.$transaction((tx) => proof(tx), { maxWait: 60_000, timeout: 600_000 });
}

/**
 * Rebuilds on hand and both roll-ups from the ledger and the parcels, in one transaction.
 *
 * @returns what was different before
 */
export async function rebuildRollUps(db: Database): Promise<RollUpProof> {
  return inTransaction(db, async (tx) => {
    const before = await proof(tx);
    await tx.$executeRaw`
      INSERT INTO "SupplyStock" ("supplyId", "amount", "value", "costValue", "costAmount")
      SELECT "supplyId", SUM("amount"), SUM(COALESCE("value", 0)), 0, 0 FROM "Movement" GROUP BY "supplyId"
      ON CONFLICT ("supplyId") DO UPDATE SET "amount" = excluded."amount", "value" = excluded."value"`;
    await tx.$executeRaw`DELETE FROM "SupplyDay"`;
    await tx.$executeRaw`
      INSERT INTO "SupplyDay" ("supplyId", "day", "cause", "unusual", "amount", "value")
      SELECT "supplyId", "effectiveDay", "cause", "unusual", SUM("amount"), SUM(COALESCE("value", 0))
      FROM "Movement" GROUP BY "supplyId", "effectiveDay", "cause", "unusual"`;
    await tx.$executeRaw`DELETE FROM "ParcelDay"`;
    await tx.$executeRaw`
      INSERT INTO "ParcelDay" ("day", "itemTypeId", "style", "cartonId", "zoneId", "unusual", "parcels", "pieces")
      ${PARCEL_DAYS}`;
    await staleForecasts(tx);
    return before;
  });
}

async function proof(tx: Transaction): Promise<RollUpProof> {
  const kept = {
    onHand: await tx.$queryRaw<Row[]>`SELECT "supplyId" AS "key", "amount", "value" FROM "SupplyStock"`,
    supplyDays: await tx.$queryRaw<Row[]>`
      SELECT "supplyId" || ' ' || "day" || ' ' || "cause" || ' ' || "unusual" AS "key", "amount", "value" FROM "SupplyDay"`,
    parcelDays: await tx.$queryRaw<Row[]>`
      SELECT "day" || ' ' || "itemTypeId" || ' ' || "style" || ' ' || "cartonId" || ' ' || "zoneId" || ' ' || "unusual" AS "key",
        "parcels" AS "amount", "pieces" AS "value" FROM "ParcelDay"`,
  };
  const summed = {
    onHand: await tx.$queryRaw<Row[]>`
      SELECT "supplyId" AS "key", SUM("amount") AS "amount", SUM(COALESCE("value", 0)) AS "value"
      FROM "Movement" GROUP BY "supplyId"`,
    supplyDays: await tx.$queryRaw<Row[]>`
      SELECT "supplyId" || ' ' || "effectiveDay" || ' ' || "cause" || ' ' || "unusual" AS "key",
        SUM("amount") AS "amount", SUM(COALESCE("value", 0)) AS "value"
      FROM "Movement" GROUP BY "supplyId", "effectiveDay", "cause", "unusual"`,
    parcelDays: await tx.$queryRaw<Row[]>`
      SELECT "day" || ' ' || "itemTypeId" || ' ' || "style" || ' ' || "cartonId" || ' ' || "zoneId" || ' ' || "unusual" AS "key",
        SUM("parcels") AS "amount", SUM("pieces") AS "value"
      FROM (${PARCEL_DAYS}) GROUP BY 1`,
  };
  const differences = [
    ...differencesOf("on hand", kept.onHand, summed.onHand),
    ...differencesOf("supply day", kept.supplyDays, summed.supplyDays),
    ...differencesOf("parcel day", kept.parcelDays, summed.parcelDays),
  ];
  return { equal: differences.length === 0, differences };
}

function differencesOf(name: string, kept: readonly Row[], summed: readonly Row[]): string[] {
  const left = new Map(kept.map((row) => [row.key, row]));
  const right = new Map(summed.map((row) => [row.key, row]));
  return [...new Set([...left.keys(), ...right.keys()])].flatMap((key) => {
    const a = left.get(key);
    const b = right.get(key);
    const same =
      BigInt(a?.amount ?? 0) === BigInt(b?.amount ?? 0) && BigInt(a?.value ?? 0) === BigInt(b?.value ?? 0);
    if (same) return [];
    return [
      `${name} ${key}: kept ${a?.amount ?? 0}, ${a?.value ?? 0}; the ledger says ${b?.amount ?? 0}, ${b?.value ?? 0}`,
    ];
  });
}
