"use server";

import { randomUUID } from "node:crypto";
import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import type { CushionStyle } from "#lib/packing/recipe-version";
import { saveItemTypePiece } from "#prisma/records/item-type-piece";
import { itemTypesOf, saveItemType } from "#prisma/records/item-types";
import { saveRecipe } from "#prisma/records/recipes";
import { suppliesOf } from "#prisma/records/supplies";
import { copyStarter } from "#prisma/starter/copy-starter";
import { STARTER_ITEMS } from "#prisma/starter/starter-items";
import { done, type FormState, problemsOf, refused, typedValues } from "../_parts/form-state";
import { newSlug } from "../_parts/new-slug";
import { shopNow } from "../_parts/shop-now";
import { cardSupplies } from "./card-supplies";
import { itemTypeForm } from "./item-type-form";
import { readPiece } from "./piece-form";
import { readRecipe } from "./recipe-form";

/** Screens beside the item types: no item type may take their address. */
const OWN_ADDRESSES = ["new", "start", "habits", "reality"];

type Of = { readonly itemTypeId: string; readonly style: CushionStyle };

/** Saves a new version of a recipe, from a day on. Parcels already packed keep the version they were packed by. */
export async function keepRecipe(of: Of, before: FormState, form: FormData): Promise<FormState> {
  const { db, shop, now } = await shopNow();
  const supplies = cardSupplies(await suppliesOf(db, { retired: true }));
  const read = readRecipe(typedValues(form), { supplies, measures: shop.measures });
  if (read.kind === "refused") return refused(before, form, read.problems);
  const { kind: _kind, steps, mass, ...recipe } = read;
  const own = {
    id: randomUUID(),
    commonPractice: false,
    steps: steps.map((step) => ({ ...step, id: randomUUID() })),
  };
  const bare = { massMg: mass?.mg ?? null, massTyped: mass?.typed ?? null };
  const outcome = await saveRecipe(db, { ...recipe, ...of, ...own }, now, bare);
  if (outcome.kind === "in-use") {
    return refused(before, form, {
      effectiveFrom: "Parcels were packed by the version of that day. Choose a later day.",
    });
  }
  revalidatePath("/", "layout");
  redirect(`/recipes/${of.itemTypeId}`);
}

/** Adds an item type, or saves the changes of the one with this id. */
export async function keepItemType(
  itemTypeId: string | null,
  before: FormState,
  form: FormData,
): Promise<FormState> {
  const { db, shop } = await shopNow();
  const read = itemTypeForm(shop.measures, shop.minorDigits).safeParse(typedValues(form));
  if (!read.success) return refused(before, form, problemsOf(read.error));
  const { name, mass, sizes, value, note, retired } = read.data;
  const taken = await db.itemType.findMany({ select: { id: true } });
  const known = (await itemTypesOf(db)).find((itemType) => itemType.id === itemTypeId);
  const [lengthUm = null, widthUm = null, heightUm = null] = sizes?.um ?? [];
  const id = known?.id ?? newSlug(name, [...taken.map((row) => row.id), ...OWN_ADDRESSES]);
  const measured = {
    massMg: mass?.mg ?? null,
    massTyped: mass?.typed ?? null,
    sizesTyped: sizes?.typed ?? null,
  };
  await saveItemType(db, {
    id,
    name,
    ...measured,
    lengthUm,
    widthUm,
    heightUm,
    valueMinor: value ?? null,
    note,
    retired,
    position: known?.position ?? taken.length,
  });
  revalidatePath("/", "layout");
  redirect(retired ? "/recipes" : `/recipes/${id}`);
}

/** Keeps how a piece of an item type looks. */
export async function keepPiece(itemTypeId: string, before: FormState, form: FormData): Promise<FormState> {
  const { db, shop } = await shopNow();
  const itemType = (await itemTypesOf(db)).find(({ id }) => id === itemTypeId);
  if (itemType === undefined) {
    return refused(before, form, { "": "This item type is no longer sold: take it back into use first." });
  }
  const read = readPiece(typedValues(form), itemType, shop.measures);
  if (read.kind === "refused") return refused(before, form, { ...read.problems });
  await saveItemTypePiece(db, itemTypeId, read.piece);
  revalidatePath("/", "layout");
  return done(before, "The description is kept. Draft a card from it.");
}

/** Copies the chosen starter recipes with the supplies that they need. */
export async function copyRecipes(before: FormState, form: FormData): Promise<FormState> {
  const { db, now, today } = await shopNow();
  const chosen = form.getAll("itemTypeId").map(String);
  const itemTypeIds = STARTER_ITEMS.map((item) => item.id).filter((id) => chosen.includes(id));
  if (itemTypeIds.length === 0)
    return refused(before, form, { "": "Tick at least one thing that you sell." });
  await copyStarter(db, { itemTypeIds, now, day: today });
  revalidatePath("/", "layout");
  redirect("/setup#suppliers");
}
