import type { RecipeVersion } from "#lib/packing/recipe-version";
import { amount } from "#lib/units/amount";
import { day } from "#lib/units/day";
import { type Database, inTransaction, type Transaction } from "../client";
import { Prisma } from "../generated/client";
import { staleForecasts } from "./stale-forecasts";

/** A recipe version with what the card says about itself. */
export type Recipe = RecipeVersion & { readonly commonPractice: boolean; readonly note: string | null };

/** Recipe versions, of all item types or of some, the oldest first within item type and style. */
export async function recipesOf(
  db: Database,
  { itemTypeIds }: { readonly itemTypeIds?: readonly string[] } = {},
): Promise<Recipe[]> {
  const rows = await db.recipe.findMany({
    where: itemTypeIds === undefined ? {} : { itemTypeId: { in: [...itemTypeIds] } },
    orderBy: [{ itemTypeId: "asc" }, { style: "asc" }, { effectiveFrom: "asc" }],
    include: { steps: { orderBy: { position: "asc" } }, cartons: { orderBy: { upTo: "asc" } } },
  });
  return rows.map((row) => ({
    id: row.id,
    itemTypeId: row.itemTypeId,
    style: row.style as RecipeVersion["style"],
    effectiveFrom: day(row.effectiveFrom),
    commonPractice: row.commonPractice,
    note: row.note,
    steps: row.steps.map((step) => ({
      id: step.id,
      position: step.position,
      words: step.words,
      supplyId: step.supplyId,
      amount: amount(Number(step.amount)),
      typedValue: step.typedValue,
      typedUnit: step.typedUnit,
      per: step.per === "parcel" ? ("parcel" as const) : ("piece" as const),
    })),
    cartons: row.cartons.map((carton) => ({ upTo: carton.upTo, supplyId: carton.supplyId })),
  }));
}

/** Versions without their steps, enough to tell which one held on a day. */
export async function recipeHeadsIn(
  tx: Transaction,
  itemTypeIds: readonly string[],
): Promise<RecipeVersion[]> {
  const rows = await tx.$queryRaw<{ id: string; itemTypeId: string; style: string; effectiveFrom: string }[]>`
    SELECT "id", "itemTypeId", "style", "effectiveFrom" FROM "Recipe"
    WHERE "itemTypeId" IN (${Prisma.join([...itemTypeIds])}) ORDER BY "effectiveFrom"`;
  return rows.map((row) => ({
    id: row.id,
    itemTypeId: row.itemTypeId,
    style: row.style as RecipeVersion["style"],
    effectiveFrom: day(row.effectiveFrom),
    steps: [],
    cartons: [],
  }));
}

/** What a bare piece weighs, with what was typed; null where it is not known. */
type BareMass = { readonly massMg: number | null; readonly massTyped: string | null };

/**
 * Saves a new version of a recipe. A version of the same day is replaced while no parcel has used it.
 *
 * @param bare what the bare piece weighs, where it was typed with the card: kept with it or not at all
 * @returns "in-use" where parcels already hold to the version of that day: choose a later one
 */
export async function saveRecipe(
  db: Database,
  recipe: Recipe,
  now: string,
  bare?: BareMass,
): Promise<{ kind: "saved" } | { kind: "in-use"; effectiveFrom: string }> {
  return inTransaction(db, async (tx) => {
    const outcome = await saveRecipeIn(tx, recipe, now);
    if (outcome.kind === "saved" && bare !== undefined)
      await tx.itemType.update({ where: { id: recipe.itemTypeId }, data: bare });
    return outcome;
  });
}

/** As `saveRecipe`, inside a transaction that the caller holds. */
export async function saveRecipeIn(
  tx: Transaction,
  recipe: Recipe,
  now: string,
): Promise<{ kind: "saved" } | { kind: "in-use"; effectiveFrom: string }> {
  const { itemTypeId, style, effectiveFrom } = recipe;
  const same = await tx.recipe.findUnique({
    where: { itemTypeId_style_effectiveFrom: { itemTypeId, style, effectiveFrom } },
    select: { id: true, _count: { select: { pieces: true } } },
  });
  if (same !== null && same._count.pieces > 0) return { kind: "in-use", effectiveFrom };
  if (same !== null) await tx.recipe.delete({ where: { id: same.id } });
  const { steps, cartons, ...head } = recipe;
  await tx.recipe.create({
    data: {
      ...head,
      recordedAt: now,
      steps: { create: steps.map((step) => ({ ...step, amount: BigInt(step.amount) })) },
      cartons: { create: cartons.map((carton) => ({ ...carton })) },
    },
  });
  await staleForecasts(tx);
  return { kind: "saved" };
}
