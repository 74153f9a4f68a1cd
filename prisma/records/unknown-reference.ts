import type { Transaction } from "../client";
import { Prisma } from "../generated/client";
import type { ParcelBody } from "./parcel-body";

/** The first thing that a parcel names and the shop does not know. */
export type UnknownReference = { readonly kind: "unknown"; readonly field: string; readonly id: string };

type Named = { readonly field: string; readonly table: Prisma.Sql; readonly ids: readonly string[] };

/**
 * Looks up all that a parcel names, in one query.
 *
 * @param tx the open transaction
 * @param body the parcel
 * @returns the field and the id that the shop does not know, or null when all are known
 */
export async function unknownReference(tx: Transaction, body: ParcelBody): Promise<UnknownReference | null> {
  const named = referencesOf(body).filter(({ ids }) => ids.length > 0);
  const queries = named.map(
    ({ field, table, ids }) =>
      Prisma.sql`SELECT ${field} AS "field", "id" FROM ${table} WHERE "id" IN (${Prisma.join([...ids])})`,
  );
  const known = await tx.$queryRaw<{ field: string; id: string }[]>`${Prisma.join(queries, " UNION ALL ")}`;
  const found = new Set(known.map(({ field, id }) => `${field}\n${id}`));
  const unknown = named
    .flatMap(({ field, ids }) => ids.map((id) => ({ field, id })))
    .find(({ field, id }) => !found.has(`${field}\n${id}`));
  return unknown === undefined ? null : { kind: "unknown", ...unknown };
}

function referencesOf(body: ParcelBody): Named[] {
  return [
    {
      field: "pieces.itemTypeId",
      table: Prisma.sql`"ItemType"`,
      ids: body.pieces.map((part) => part.itemTypeId),
    },
    { field: "lines.supplyId", table: Prisma.sql`"Supply"`, ids: body.lines.map((line) => line.supplyId) },
    {
      field: "cartons.supplyId",
      table: Prisma.sql`"Supply"`,
      ids: body.cartons.flatMap((carton) => (carton.supplyId === null ? [] : [carton.supplyId])),
    },
    { field: "zoneId", table: Prisma.sql`"Zone"`, ids: body.zoneId === null ? [] : [body.zoneId] },
    {
      field: "lines.recipeStepId",
      table: Prisma.sql`"RecipeStep"`,
      ids: body.lines.flatMap((line) => (line.recipeStepId === null ? [] : [line.recipeStepId])),
    },
  ];
}
