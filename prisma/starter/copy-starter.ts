import { randomUUID } from "node:crypto";
import type { Day } from "#lib/units/day";
import type { Instant } from "#lib/units/instant";
import type { Database } from "#prisma/client";
import { saveItemType } from "#prisma/records/item-types";
import { recipesOf, saveRecipe } from "#prisma/records/recipes";
import { saveSupply, suppliesOf } from "#prisma/records/supplies";
import { starterCartonId } from "#prisma/starter/starter-cartons";
import type { StarterItem } from "#prisma/starter/starter-item";
import { STARTER_ITEMS } from "#prisma/starter/starter-items";
import { starterSteps, starterSupplyIds } from "#prisma/starter/starter-steps";
import { STARTER_SUPPLIES } from "#prisma/starter/starter-supplies";
import { supplyOfStarter } from "#prisma/starter/supply-of-starter";

/** What a copy added; what the shop had already is left as it was. */
export type StarterCopied = {
  readonly supplies: number;
  readonly itemTypes: number;
  readonly recipes: number;
};

/**
 * Copies starter item types with their recipes on paper and on bubble fill, and only the supplies that
 * these need. Nothing that the shop already has is changed.
 *
 * @param db - the database
 * @param wanted.itemTypeIds - the types to copy; all of them if left out
 * @param wanted.day - the shop's day from which the recipes hold
 * @param wanted.now - the instant of recording
 * @returns how many of each were added
 * @throws RangeError if there is no starter item type of an id
 * @example await copyStarter(db, { itemTypeIds: ["mug"], day: day("2026-11-25"), now });
 */
export async function copyStarter(
  db: Database,
  wanted: { readonly itemTypeIds?: readonly string[]; readonly day: Day; readonly now: Instant },
): Promise<StarterCopied> {
  const items = wantedItems(wanted.itemTypeIds);
  const supplies = await copySupplies(db, items);
  const itemTypes = await copyItemTypes(db, items);
  const recipes = await copyRecipes(db, items, wanted);
  return { supplies, itemTypes, recipes };
}

function wantedItems(ids: readonly string[] | undefined): readonly StarterItem[] {
  if (ids === undefined) return STARTER_ITEMS;
  const unknown = ids.filter((id) => !STARTER_ITEMS.some((item) => item.id === id));
  if (unknown.length > 0) {
    throw new RangeError(`copyStarter requires ids of starter item types, got ${unknown.join(", ")}`);
  }
  return STARTER_ITEMS.filter((item) => ids.includes(item.id));
}

async function copySupplies(db: Database, items: readonly StarterItem[]): Promise<number> {
  const needed = new Set(items.flatMap(starterSupplyIds));
  const known = new Set((await suppliesOf(db, { retired: true })).map((supply) => supply.id));
  const missing = STARTER_SUPPLIES.filter((supply) => needed.has(supply.id) && !known.has(supply.id));
  for (const supply of missing) {
    await saveSupply(db, supplyOfStarter(supply, STARTER_SUPPLIES.indexOf(supply)));
  }
  return missing.length;
}

async function copyItemTypes(db: Database, items: readonly StarterItem[]): Promise<number> {
  const rows = await db.itemType.findMany({ select: { id: true } });
  const known = new Set(rows.map((row) => row.id));
  const missing = items.filter((item) => !known.has(item.id));
  for (const item of missing) {
    await saveItemType(db, {
      id: item.id,
      name: item.name,
      massMg: item.grams * 1000,
      massTyped: `${item.grams} g`,
      lengthUm: null,
      widthUm: null,
      heightUm: null,
      sizesTyped: null,
      note: item.note === "" ? null : item.note,
      retired: false,
      position: STARTER_ITEMS.indexOf(item),
    });
  }
  return missing.length;
}

async function copyRecipes(
  db: Database,
  items: readonly StarterItem[],
  wanted: { readonly day: Day; readonly now: Instant },
): Promise<number> {
  const known = new Set((await recipesOf(db)).map((recipe) => `${recipe.itemTypeId} ${recipe.style}`));
  const styles = ["paper", "bubble"] as const;
  const missing = items
    .flatMap((item) => styles.map((style) => ({ item, style })))
    .filter(({ item, style }) => !known.has(`${item.id} ${style}`));
  for (const { item, style } of missing) {
    const version = {
      id: randomUUID(),
      itemTypeId: item.id,
      style,
      effectiveFrom: wanted.day,
      commonPractice: true,
      note: "Common practice: pack one, weigh it, and send a test parcel before you rely on it.",
      steps: starterSteps(item, style).map((step, position) => ({ id: randomUUID(), position, ...step })),
      cartons: item.cartons.map((carton) => ({ upTo: carton.upTo, supplyId: starterCartonId(carton.sizes) })),
    };
    const outcome = await saveRecipe(db, version, wanted.now);
    if (outcome.kind !== "saved") {
      throw new RangeError(`copyStarter requires recipes that no parcel uses yet, got ${item.id} ${style}`);
    }
  }
  return missing.length;
}
