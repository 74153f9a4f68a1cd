import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { CUSHION_STYLES, recipeOn } from "#lib/packing/recipe-version";
import { itemTypesOf } from "#prisma/records/item-types";
import { recipesOf } from "#prisma/records/recipes";
import { suppliesOf } from "#prisma/records/supplies";
import { Page } from "../../../_parts/page";
import { shopNow } from "../../../_parts/shop-now";
import { RecipeForm } from "../../_parts/recipe-form";
import { keepRecipe } from "../../actions";
import { cardSupplies } from "../../card-supplies";
import { massText } from "../../item-type-fields";
import { CountsSaid } from "../../reality/_parts/counts-said";
import { recipeRows } from "../../recipe-rows";
import { supplyTerms } from "../../supply-terms";

export const metadata: Metadata = { title: "Change a recipe" };

type EditProps = {
  readonly params: Promise<{ readonly id: string }>;
  readonly searchParams: Promise<{ readonly style?: string }>;
};

/** A new version of a card, from a day on. */
export default async function EditRecipePage({ params, searchParams }: EditProps) {
  const { db, shop, today } = await shopNow();
  const { id } = await params;
  const asked = (await searchParams).style;
  const style = CUSHION_STYLES.find((one) => one === asked) ?? "paper";
  const [itemTypes, recipes, supplies] = await Promise.all([
    itemTypesOf(db),
    recipesOf(db, { itemTypeIds: [id] }),
    suppliesOf(db, { retired: true }),
  ]);
  const itemType = itemTypes.find((row) => row.id === id);
  if (itemType === undefined) notFound();
  const used = supplies.filter((supply) => !supply.retired);
  const choices = (carton: boolean) =>
    used
      .filter((supply) => (supply.kind === "carton") === carton)
      .map(({ id: value, name: words }) => ({ value, words }));
  const { measures, currency, minorDigits } = shop;
  const ground = {
    itemTypeId: id,
    style,
    today,
    measures,
    supplies: cardSupplies(supplies),
    terms: await supplyTerms(db, supplies),
    cards: CUSHION_STYLES.flatMap((each) => recipeOn(recipes, id, each, today) ?? []),
  };
  return (
    <Page
      finding={`${itemType.name} on ${style}: the card as it is done from a day on.`}
      aside="Parcels packed before that day keep their own amounts. It is an estimate: it does not certify that a package protects its contents; send a test parcel."
    >
      <CountsSaid db={db} today={today} of={{ itemTypeId: id, style }} />
      <RecipeForm
        action={keepRecipe.bind(null, { itemTypeId: id, style })}
        rows={recipeRows(recipeOn(recipes, id, style, today), used, massText(itemType, measures))}
        supplies={[...choices(false), ...choices(true)]}
        cartons={choices(true)}
        ground={ground}
        money={{ currency, minorDigits }}
      />
    </Page>
  );
}
