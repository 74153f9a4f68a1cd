import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { parcelsIn } from "#lib/packing/cost-change/packed-period";
import { CUSHION_STYLES } from "#lib/packing/recipe-version";
import { day, isDay } from "#lib/units/day";
import { itemTypesOf } from "#prisma/records/item-types";
import { packedSpan, parcelsByVersion } from "#prisma/records/packing-costs";
import { recipesOf } from "#prisma/records/recipes";
import { replacementPrices } from "#prisma/records/replacement-prices";
import { suppliesOf } from "#prisma/records/supplies";
import { ButtonLink } from "../../../_parts/button-link";
import { Page } from "../../../_parts/page";
import { Section } from "../../../_parts/section";
import { shopNow } from "../../../_parts/shop-now";
import { supplyTerms } from "../../supply-terms";
import { ChangeAgainst } from "./_parts/change-against";
import { CostByMonth } from "./_parts/cost-by-month";
import { VersionLines } from "./_parts/version-lines";
import { fourWeeksTo, lastMonths, usualDayBefore } from "./change-span";

export const metadata: Metadata = { title: "What changed" };

type ChangesPageProps = {
  readonly params: Promise<{ readonly id: string }>;
  readonly searchParams: Promise<{ readonly against?: string | string[] }>;
};

/** What changed an item type's material cost, month by month and cause by cause, and the versions of its cards. */
export default async function ChangesPage({ params, searchParams }: ChangesPageProps) {
  const { db, shop, today } = await shopNow();
  const [{ id }, { against: asked }] = await Promise.all([params, searchParams]);
  const [itemTypes, recipes, supplies] = await Promise.all([
    itemTypesOf(db, { retired: true }),
    recipesOf(db, { itemTypeIds: [id] }),
    suppliesOf(db, { retired: true }),
  ]);
  const itemType = itemTypes.find((row) => row.id === id);
  if (itemType === undefined) notFound();
  const isAsked = typeof asked === "string" && asked !== "";
  const isRead = isAsked && isDay(asked) && asked < today;
  const against = isRead ? day(asked) : usualDayBefore(today);
  const spanOf = (span: Parameters<typeof packedSpan>[2]) => packedSpan(db, id, span, recipes);
  const [before, now, parcels, terms, ...months] = await Promise.all([
    spanOf(fourWeeksTo(against)),
    spanOf(fourWeeksTo(today)),
    parcelsByVersion(db, id),
    supplyTerms(db, supplies),
    ...lastMonths(today).map(async ({ month, ...span }) => ({ month, packed: await spanOf(span) })),
  ]);
  const supplyById = new Map(supplies.map((supply) => [supply.id, supply]));
  const nameOf = (supplyId: string) => supplyById.get(supplyId)?.name ?? supplyId;
  const cartons = new Set(supplies.filter(({ kind }) => kind === "carton").map((supply) => supply.id));
  const versions = await Promise.all(
    recipes.map(async (recipe) => ({
      recipe,
      pricesThen: await replacementPrices(db, recipe.effectiveFrom),
    })),
  );
  const packedMonths = months.filter(({ packed }) => parcelsIn(packed) > 0);
  return (
    <Page
      finding={`${itemType.name}: what changed its cards and its cost.`}
      actions={<ButtonLink href={`/recipes/${id}`}>Back to the recipe</ButtonLink>}
    >
      <ChangeAgainst
        name={itemType.name}
        against={against}
        problem={isAsked && !isRead ? "Write a day before today, like 2026-05-31." : undefined}
        before={before}
        now={now}
        cartons={cartons}
        nameOf={nameOf}
        shop={shop}
      />
      <Section title="Month by month" id="months">
        {packedMonths.length === 0 ? (
          <p>No parcel of it was packed in the last year.</p>
        ) : (
          <CostByMonth months={packedMonths} cartons={cartons} nameOf={nameOf} shop={shop} />
        )}
      </Section>
      {CUSHION_STYLES.map((style) => (
        <VersionLines
          key={style}
          style={style}
          versions={versions.filter(({ recipe }) => recipe.style === style)}
          pieceMassMg={itemType.massMg}
          supplies={supplyById}
          terms={terms}
          parcels={parcels}
          shop={shop}
        />
      ))}
    </Page>
  );
}
