import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { CUSHION_STYLES, recipeOn } from "#lib/packing/recipe-version";
import { day } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import { formatMass, milligrams } from "#lib/units/mass";
import { itemTypesOf } from "#prisma/records/item-types";
import { recipesOf } from "#prisma/records/recipes";
import { suppliesOf } from "#prisma/records/supplies";
import { ButtonLink } from "../../../_parts/button-link";
import { Page } from "../../../_parts/page";
import { shopNow } from "../../../_parts/shop-now";
import { PackingOrder } from "./_parts/packing-order";
import styles from "./_parts/packing-order.module.css";

export const metadata: Metadata = { title: "Packing card" };

type CardPageProps = {
  readonly params: Promise<{ readonly id: string }>;
  readonly searchParams: Promise<{ readonly style?: string | string[] }>;
};

/** A recipe's card in the order of the work, for half a page on the wall. */
export default async function CardPage({ params, searchParams }: CardPageProps) {
  const { db, shop, today } = await shopNow();
  const [{ id }, { style: asked }] = await Promise.all([params, searchParams]);
  const style = CUSHION_STYLES.find((each) => each === asked) ?? CUSHION_STYLES[0] ?? "paper";
  const [itemTypes, recipes, supplies] = await Promise.all([
    itemTypesOf(db, { retired: true }),
    recipesOf(db, { itemTypeIds: [id] }),
    suppliesOf(db, { retired: true }),
  ]);
  const itemType = itemTypes.find((row) => row.id === id);
  const recipe = recipeOn(recipes, id, style, today);
  if (itemType === undefined || recipe === null) notFound();
  const bare =
    itemType.massMg === null
      ? ""
      : ` The bare piece weighs ${formatMass(milligrams(itemType.massMg), shop.measures)}.`;
  return (
    <Page
      width="narrow"
      finding={`${itemType.name}, on ${recipe.style}`}
      aside={`The card from ${formatDay(day(recipe.effectiveFrom), { year: true })}.${bare}`}
    >
      <PackingOrder recipe={recipe} supplies={new Map(supplies.map((supply) => [supply.id, supply]))} />
      <p className={styles.screenOnly}>
        Print it from the browser: it takes half a page.{" "}
        <ButtonLink href={`/recipes/${encodeURIComponent(id)}`} tone="plain">
          Back to the recipe
        </ButtonLink>
      </p>
    </Page>
  );
}
