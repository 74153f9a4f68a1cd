import type { CommonTrait, TraitCount } from "#lib/packing/breakage/broken-in-common";
import type { Day } from "#lib/units/day";
import type { Database } from "../client";

/** Parcels since a day, and what those that broke had in common with others. */
export type BrokenParcels = {
  readonly parcels: number;
  readonly broken: number;
  readonly traits: readonly TraitCount[];
  /** how often each cause was named */
  readonly causes: ReadonlyMap<string, number>;
};

type CountRow = {
  readonly trait: CommonTrait;
  readonly value: string;
  readonly parcels: number | bigint;
  readonly broken: number | bigint | null;
};

/**
 * Counts parcels by what they may have in common, and how many of each arrived broken. Voided ones are left out.
 *
 * @param db the database
 * @param since first day packed
 */
export async function brokenParcelsSince(db: Database, since: Day): Promise<BrokenParcels> {
  const where = { packedOn: { gte: since }, voidedAt: null };
  const [parcels, broken, causes, rows] = await Promise.all([
    db.parcel.count({ where }),
    db.parcel.count({ where: { ...where, brokenOn: { not: null } } }),
    db.parcel.groupBy({
      by: ["brokenCause"],
      where: { ...where, brokenOn: { not: null } },
      _count: { _all: true },
    }),
    db.$queryRaw<CountRow[]>`
      WITH sent AS (
        SELECT "id", "style", "brokenOn" IS NOT NULL AS "isBroken" FROM "Parcel"
        WHERE "packedOn" >= ${since} AND "voidedAt" IS NULL
      )
      SELECT 'style' AS "trait", "style" AS "value", COUNT(*) AS "parcels", SUM("isBroken") AS "broken"
      FROM sent GROUP BY "style"
      UNION ALL
      SELECT 'carton', carton."supplyId", COUNT(*), SUM("isBroken")
      FROM sent JOIN "ParcelCarton" carton ON carton."parcelId" = sent."id" AND carton."position" = 0
      WHERE carton."supplyId" IS NOT NULL GROUP BY carton."supplyId"
      UNION ALL
      SELECT 'item-type', piece."itemTypeId", COUNT(*), SUM("isBroken")
      FROM sent JOIN "ParcelPiece" piece ON piece."parcelId" = sent."id" GROUP BY piece."itemTypeId"
      UNION ALL
      SELECT 'recipe', piece."recipeId", COUNT(*), SUM("isBroken")
      FROM sent JOIN "ParcelPiece" piece ON piece."parcelId" = sent."id"
      WHERE piece."recipeId" IS NOT NULL GROUP BY piece."recipeId"`,
  ]);
  return {
    parcels,
    broken,
    traits: rows.map((row) => ({ ...row, parcels: Number(row.parcels), broken: Number(row.broken ?? 0) })),
    causes: new Map(causes.map((each) => [each.brokenCause ?? "unknown", each._count._all])),
  };
}
