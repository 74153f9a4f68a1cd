import type { Metadata } from "next";
import { ButtonLink } from "../../_parts/button-link";
import { Page } from "../../_parts/page";
import { shopNow } from "../../_parts/shop-now";
import styles from "./_parts/listing.module.css";
import { ListingFacts } from "./_parts/listing-facts";
import { ListingForm } from "./_parts/listing-form";
import { SizesBasis } from "./_parts/sizes-basis";
import { askedListing } from "./asked-listing";
import { askedTexts } from "./listing-question";
import { readListingGround } from "./read-listing-ground";

export const metadata: Metadata = { title: "What to promise" };

type ListingPageProps = { readonly searchParams: Promise<Record<string, string | string[] | undefined>> };

/** At listing time: which weight band to promise, which carton, and what packing and sending will cost. */
export default async function ListingPage({ searchParams }: ListingPageProps) {
  const bench = await shopNow();
  const [query, ground] = await Promise.all([searchParams, readListingGround(bench)]);
  const { choices } = ground;
  const asked = askedListing(query, ground, bench.shop.measures);
  const typed = (name: string): string => (typeof query[name] === "string" ? query[name] : "");
  const bySizes = asked.kind === "answered" ? asked.bySizes : null;
  return (
    <Page
      width="narrow"
      finding={asked.finding}
      aside="Reckoned as at the bench: the bill of a card, corrected by what your parcels weighed. The carrier's own rates and size rules decide."
    >
      <ListingForm
        // Fields keep what they began with: another address is another form.
        key={new URLSearchParams(askedTexts(query)).toString()}
        choices={choices}
        typed={typed}
        problems={asked.problems}
      />
      {asked.kind === "answered" ? (
        <ListingFacts answer={asked.answer} choices={choices} hasZones={ground.hasZones} />
      ) : null}
      {bySizes === null ? null : (
        <SizesBasis {...bySizes} choices={choices} habits={ground.habits} typed={askedTexts(query)} />
      )}
      <p className={styles.links}>
        {bySizes === null ? null : (
          <ButtonLink
            href={`/recipes/new?${new URLSearchParams({ mass: typed("bare"), sizes: typed("sizes") })}`}
          >
            Make a recipe of it
          </ButtonLink>
        )}
        {choices.steps.length > 0 ? null : <ButtonLink href="/postage#add">Add a rate card</ButtonLink>}
        <ButtonLink href="/pack" tone="plain">
          Back to the bench
        </ButtonLink>
      </p>
    </Page>
  );
}
