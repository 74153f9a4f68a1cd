import type { Metadata } from "next";
import Link from "next/link";
import { itemTypesOf } from "#prisma/records/item-types";
import { recipesOf } from "#prisma/records/recipes";
import { ButtonLink } from "../_parts/button-link";
import { Page } from "../_parts/page";
import { shopNow } from "../_parts/shop-now";
import styles from "./_parts/recipe-card.module.css";
import { recipesFinding } from "./recipes-finding";
import { stylesWords } from "./styles-words";

export const metadata: Metadata = { title: "Recipes" };

/** What each item type takes, on paper and on bubble. */
export default async function RecipesPage() {
  const { db } = await shopNow();
  const [itemTypes, recipes] = await Promise.all([itemTypesOf(db), recipesOf(db)]);
  return (
    <Page
      finding={recipesFinding(itemTypes, recipes)}
      aside="A recipe is an estimate: it does not certify that a package protects its contents. Send a test parcel."
      actions={
        <>
          <ButtonLink href="/recipes/start" tone={recipes.length === 0 ? "primary" : "secondary"}>
            Copy starter recipes
          </ButtonLink>
          <ButtonLink href="/recipes/new">Add an item type</ButtonLink>
          <ButtonLink href="/recipes/habits">How you pack</ButtonLink>
          {recipes.length === 0 ? null : (
            <ButtonLink href="/recipes/reality">Card against reality</ButtonLink>
          )}
        </>
      }
    >
      <ul className={styles.list}>
        {itemTypes.map((itemType) => (
          <li key={itemType.id} className={styles.row}>
            <Link href={`/recipes/${itemType.id}`}>{itemType.name}</Link>
            <span className={styles.aside}>
              {stylesWords(recipes.filter((recipe) => recipe.itemTypeId === itemType.id))}
            </span>
          </li>
        ))}
      </ul>
    </Page>
  );
}
