import type { Metadata } from "next";
import { type BrokenInCommon, brokenInCommon } from "#lib/packing/breakage/broken-in-common";
import { addDays, day } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import { brokenParcelsSince } from "#prisma/records/broken-parcels";
import { itemTypesOf } from "#prisma/records/item-types";
import { recipesOf } from "#prisma/records/recipes";
import { suppliesOf } from "#prisma/records/supplies";
import { ButtonLink } from "../../_parts/button-link";
import { Page } from "../../_parts/page";
import { Section } from "../../_parts/section";
import { shopNow } from "../../_parts/shop-now";
import { BROKEN_CAUSES } from "../broken-causes";
import { CommonList } from "./_parts/common-list";
import { brokenFinding } from "./broken-finding";

export const metadata: Metadata = { title: "What broke" };

const DAYS_LOOKED_AT = 728;

/** What did parcels that arrived broken have in common? */
export default async function BrokenPage() {
  const { db, today } = await shopNow();
  const since = addDays(today, -DAYS_LOOKED_AT);
  const [found, itemTypes, supplies, recipes] = await Promise.all([
    brokenParcelsSince(db, since),
    itemTypesOf(db, { retired: true }),
    suppliesOf(db, { retired: true }),
    recipesOf(db),
  ]);
  const names = new Map([...itemTypes, ...supplies].map((known) => [known.id, known.name]));
  const nameOf = ({ trait, value }: BrokenInCommon): string => {
    if (trait === "style") return `on ${value}`;
    if (trait !== "recipe") return names.get(value) ?? value;
    const recipe = recipes.find(({ id }) => id === value);
    if (recipe === undefined) return "a card that is gone";
    const from = formatDay(day(recipe.effectiveFrom), { year: true });
    return `the ${recipe.style} card of ${names.get(recipe.itemTypeId) ?? recipe.itemTypeId} from ${from}`;
  };
  const common = brokenInCommon(found.traits, found);
  const [worst] = common;
  return (
    <Page
      finding={brokenFinding(found, worst === undefined ? null : { common: worst, name: nameOf(worst) })}
      aside={`Parcels packed since ${formatDay(since, { year: true })}, voided ones left out. What breaks a few times breaks by luck too: each line says how likely that is, reckoned with all that was looked at.`}
      actions={<ButtonLink href="/parcels">All parcels</ButtonLink>}
    >
      {common.length === 0 ? (
        <p>
          Where a parcel arrives broken, say so on its own page: what went wrong is then set against all
          others.
        </p>
      ) : (
        <Section title="What they had in common" aside="The least likely by luck first.">
          <CommonList rows={common.map((row) => ({ row, name: nameOf(row) }))} />
        </Section>
      )}
      {found.broken === 0 ? null : (
        <Section title="What went wrong">
          <ul>
            {BROKEN_CAUSES.filter(({ value }) => found.causes.has(value)).map(({ value, words }) => (
              <li key={value}>
                {found.causes.get(value)} × {words}
              </li>
            ))}
          </ul>
        </Section>
      )}
    </Page>
  );
}
