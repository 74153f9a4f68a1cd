import type { PackedPeriod, PackedStyle } from "#lib/packing/cost-change/packed-period";
import type { RecipeVersion } from "#lib/packing/recipe-version";
import { type RecipeTakes, recipeTakes } from "#lib/packing/usual-bill";
import { AMOUNT_PER_UNIT } from "#lib/units/amount";
import type { Day } from "#lib/units/day";
import type { Database } from "../client";
import { Prisma } from "../generated/client";

/** Parcels of an item type in a span of days; `leftOut` had a supply whose cost was not known. */
export type PackedSpan = PackedPeriod & { readonly leftOut: number };

type GroupRow = {
  readonly style: string;
  readonly recipeId: string | null;
  readonly parcels: bigint;
  readonly pieces: bigint;
};
type UseRow = {
  readonly style: string;
  readonly supplyId: string;
  readonly amount: bigint;
  readonly value: bigint;
};

/**
 * How an item type was packed in a span of days and what it cost, from the ledger: parcels that held nothing else, that
 * were neither voided nor unusual, and whose every supply had a cost.
 *
 * @param db the database
 * @param itemTypeId item type
 * @param span days, both included
 * @param recipes all versions of its recipes
 * @returns parcels by style, what they took, and the mean unit costs that they were booked with
 */
export async function packedSpan(
  db: Database,
  itemTypeId: string,
  span: { readonly from: Day; readonly to: Day },
  recipes: readonly RecipeVersion[],
): Promise<PackedSpan> {
  const packed = Prisma.sql`
    FROM "ParcelPiece" pp JOIN "Parcel" p ON p."id" = pp."parcelId"
    WHERE pp."itemTypeId" = ${itemTypeId} AND p."packedOn" >= ${span.from} AND p."packedOn" <= ${span.to}
      AND p."voidedAt" IS NULL AND NOT p."unusual"
      AND (SELECT COUNT(*) FROM "ParcelPiece" q WHERE q."parcelId" = p."id") = 1`;
  const unpriced = Prisma.sql`EXISTS (
    SELECT 1 FROM "Movement" n WHERE n."parcelId" = p."id" AND n."cause" = 'packed' AND n."value" IS NULL)`;
  const [groups, uses, [left]] = await Promise.all([
    db.$queryRaw<GroupRow[]>`
      SELECT p."style" AS "style", pp."recipeId" AS "recipeId", COUNT(*) AS "parcels", SUM(pp."pieces") AS "pieces"
      ${packed} AND NOT ${unpriced} GROUP BY 1, 2 ORDER BY 1, 2`,
    db.$queryRaw<UseRow[]>`
      SELECT u."style" AS "style", m."supplyId" AS "supplyId", -SUM(m."amount") AS "amount", -SUM(m."value") AS "value"
      FROM (SELECT p."id" AS "id", p."style" AS "style" ${packed} AND NOT ${unpriced}) u
      JOIN "Movement" m ON m."parcelId" = u."id" AND m."cause" = 'packed' GROUP BY 1, 2 ORDER BY 1, 2`,
    db.$queryRaw<{ count: bigint }[]>`SELECT COUNT(*) AS "count" ${packed} AND ${unpriced}`,
  ]);
  return {
    styles: [...new Set(groups.map(({ style }) => style))].map((style) =>
      packedStyle(
        style,
        groups.filter((row) => row.style === style),
        uses.filter((row) => row.style === style),
        recipes,
      ),
    ),
    unitCosts: unitCostsOf(uses),
    leftOut: Number(left?.count ?? 0),
  };
}

/**
 * How many parcels were packed by each version of an item type's recipes; voided ones are not in it.
 *
 * @returns by id of the version; one that no parcel was packed by is not in it
 */
export async function parcelsByVersion(db: Database, itemTypeId: string): Promise<Map<string, number>> {
  const rows = await db.parcelPiece.groupBy({
    by: ["recipeId"],
    where: { itemTypeId, recipeId: { not: null }, parcel: { voidedAt: null } },
    _count: { _all: true },
  });
  return new Map(rows.map(({ recipeId, _count }) => [recipeId ?? "", _count._all]));
}

function packedStyle(
  style: string,
  groups: readonly GroupRow[],
  uses: readonly UseRow[],
  recipes: readonly RecipeVersion[],
): PackedStyle {
  const parcels = groups.reduce((sum, row) => sum + Number(row.parcels), 0);
  return {
    style,
    parcels,
    pieces: groups.reduce((sum, row) => sum + Number(row.pieces), 0),
    card: meanCard(groups, parcels, recipes),
    took: new Map(uses.map((row) => [row.supplyId, Number(row.amount) / AMOUNT_PER_UNIT])),
  };
}

/** The mean of the cards that parcels were packed by; one without a card counts as a card of nothing. */
function meanCard(
  groups: readonly GroupRow[],
  parcels: number,
  recipes: readonly RecipeVersion[],
): RecipeTakes {
  const perPiece = new Map<string, number>();
  const perParcel = new Map<string, number>();
  for (const group of groups) {
    const recipe = recipes.find(({ id }) => id === group.recipeId);
    if (recipe === undefined) continue;
    const takes = recipeTakes(recipe);
    const share = Number(group.parcels) / parcels;
    addTo(perPiece, takes.perPiece, share);
    addTo(perParcel, takes.perParcel, share);
  }
  return { perPiece, perParcel };
}

function addTo(sums: Map<string, number>, takes: ReadonlyMap<string, number>, share: number): void {
  for (const [supplyId, units] of takes) sums.set(supplyId, (sums.get(supplyId) ?? 0) + share * units);
}

/** A supply that was taken and put back again has no unit cost. */
function unitCostsOf(uses: readonly UseRow[]): Map<string, number> {
  const sums = new Map<string, { amount: number; value: number }>();
  for (const { supplyId, amount, value } of uses) {
    const sum = sums.get(supplyId) ?? { amount: 0, value: 0 };
    sums.set(supplyId, { amount: sum.amount + Number(amount), value: sum.value + Number(value) });
  }
  return new Map(
    [...sums]
      .filter(([, { amount }]) => amount > 0)
      .map(([supplyId, { amount, value }]) => [supplyId, (value * AMOUNT_PER_UNIT) / amount]),
  );
}
