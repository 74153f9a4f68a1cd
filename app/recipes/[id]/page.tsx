import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { CUSHION_STYLES, recipeOn } from "#lib/packing/recipe-version";
import { itemTypesOf } from "#prisma/records/item-types";
import { recipesOf } from "#prisma/records/recipes";
import { suppliesOf } from "#prisma/records/supplies";
import { ButtonLink } from "../../_parts/button-link";
import { Page } from "../../_parts/page";
import { RecordForm } from "../../_parts/record-form";
import { Section } from "../../_parts/section";
import { shopNow } from "../../_parts/shop-now";
import { RecipeCard } from "../_parts/recipe-card";
import { keepItemType } from "../actions";
import { itemTypeFields } from "../item-type-fields";

export const metadata: Metadata = { title: "Recipe" };

/** One item type: its card in each cushion style. */
export default async function ItemTypePage({
  params,
}: {
  readonly params: Promise<{ readonly id: string }>;
}) {
  const { db, shop, today } = await shopNow();
  const { id } = await params;
  const [itemTypes, recipes, supplies] = await Promise.all([
    itemTypesOf(db),
    recipesOf(db, { itemTypeIds: [id] }),
    suppliesOf(db, { retired: true }),
  ]);
  const itemType = itemTypes.find((row) => row.id === id);
  if (itemType === undefined) notFound();
  const supplyById = new Map(supplies.map((supply) => [supply.id, supply]));
  const missing = CUSHION_STYLES.filter((style) => !recipes.some((recipe) => recipe.style === style));
  const cards = CUSHION_STYLES.flatMap((style) => recipeOn(recipes, id, style, today) ?? []);
  return (
    <Page
      finding={
        cards.length === 0
          ? `${itemType.name} has no recipe yet.`
          : `${itemType.name}: what one takes, step by step.`
      }
      actions={missing.map((style) => (
        <ButtonLink key={style} href={`/recipes/${id}/edit?style=${style}`}>
          Write a {style} card
        </ButtonLink>
      ))}
    >
      {cards.map((recipe) => (
        <RecipeCard
          key={recipe.id}
          recipe={recipe}
          supplies={supplyById}
          today={today}
          versions={recipes.filter((other) => other.style === recipe.style).indexOf(recipe) + 1}
        />
      ))}
      <Section title="The bare piece" id="piece">
        <RecordForm
          action={keepItemType.bind(null, id)}
          label={itemType.name}
          fields={itemTypeFields(itemType, shop.measures)}
          submit="Save the item type"
        />
      </Section>
    </Page>
  );
}
