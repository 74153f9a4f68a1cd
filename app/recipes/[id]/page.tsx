import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { cardSum } from "#lib/packing/card-sum";
import { CUSHION_STYLES, recipeOn } from "#lib/packing/recipe-version";
import { pieceOf } from "#prisma/records/item-type-piece";
import { itemTypesOf } from "#prisma/records/item-types";
import { recipesOf } from "#prisma/records/recipes";
import { suppliesOf } from "#prisma/records/supplies";
import { ButtonLink } from "../../_parts/button-link";
import { Page } from "../../_parts/page";
import { RecordForm } from "../../_parts/record-form";
import { Section } from "../../_parts/section";
import { shopNow } from "../../_parts/shop-now";
import { RecipeCard } from "../_parts/recipe-card";
import { keepItemType, keepPiece } from "../actions";
import { itemTypeFields } from "../item-type-fields";
import { pieceFields } from "../piece-fields";
import { comparedWords, sumWords } from "../sum-words";
import { supplyTerms } from "../supply-terms";

export const metadata: Metadata = { title: "Recipe" };

/** One item type: its card in each cushion style, what its piece looks like, and what it is called. */
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
  const piece = pieceOf(itemType);
  const terms = await supplyTerms(db, supplies);
  const summed = cards.map((recipe) => ({
    recipe,
    style: recipe.style,
    sum: cardSum(recipe, 1, itemType.massMg, terms),
  }));
  const nameOf = (each: string) => (each === id ? "the piece itself" : (supplyById.get(each)?.name ?? each));
  return (
    <Page
      finding={
        cards.length === 0
          ? `${itemType.name} has no recipe yet.`
          : `${itemType.name}: what one takes, step by step.`
      }
      actions={
        <>
          <ButtonLink href={piece === null ? "#piece" : `/recipes/${id}/draft`}>
            {piece === null ? "Describe it, and have a card drafted" : "Draft a card"}
          </ButtonLink>
          {missing.map((style) => (
            <ButtonLink key={style} href={`/recipes/${id}/edit?style=${style}`}>
              Write a {style} card
            </ButtonLink>
          ))}
          {cards.length === 0 ? null : (
            <ButtonLink href={`/recipes/${id}/changes`}>What changed its cost</ButtonLink>
          )}
        </>
      }
    >
      {summed.map(({ recipe, sum }) => (
        <RecipeCard
          key={recipe.id}
          recipe={recipe}
          supplies={supplyById}
          today={today}
          versions={recipes.filter((other) => other.style === recipe.style).indexOf(recipe) + 1}
          sums={sumWords(sum, nameOf, shop)}
          compared={comparedWords(
            sum,
            summed.filter((other) => other.style !== recipe.style),
            shop,
          )}
        />
      ))}
      <Section
        title="The piece"
        id="piece"
        aside="Described once, a first card can be drafted from it. Sizes in inches or in centimetres, but not both."
      >
        <RecordForm
          action={keepPiece.bind(null, id)}
          label="The piece"
          groups={pieceFields(piece, shop.measures)}
          fields={[]}
          submit="Keep the description"
        />
      </Section>
      <Section title="Name and bare weight" id="item-type">
        <RecordForm
          action={keepItemType.bind(null, id)}
          label={itemType.name}
          fields={itemTypeFields(itemType, shop)}
          submit="Save the item type"
        />
      </Section>
    </Page>
  );
}
