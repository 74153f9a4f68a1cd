import type { Metadata } from "next";
import { holdsOn } from "#lib/postage/card-on";
import { addDays } from "#lib/units/day";
import { parcelCountsOf } from "#prisma/records/parcel-lists";
import { rateCardsOf } from "#prisma/records/rate-cards";
import { ButtonLink } from "../../_parts/button-link";
import { Page } from "../../_parts/page";
import { shopNow } from "../../_parts/shop-now";
import { readPackingChoices } from "../read-packing-choices";
import styles from "./_parts/listing.module.css";
import { ListingFacts } from "./_parts/listing-facts";
import { ListingForm } from "./_parts/listing-form";
import { listingAnswer } from "./listing-answer";
import { listingFinding } from "./listing-finding";
import { listingQuestion } from "./listing-question";
import { zoneShares } from "./zone-shares";

export const metadata: Metadata = { title: "What to promise" };

type ListingPageProps = { readonly searchParams: Promise<Record<string, string | string[] | undefined>> };

const DAYS_OF_ZONES = 182;

/** At listing time: which weight band to promise, which carton, and what it will cost to send. */
export default async function ListingPage({ searchParams }: ListingPageProps) {
  const bench = await shopNow();
  const { db, shop, today } = bench;
  const [query, choices, cards, counts] = await Promise.all([
    searchParams,
    readPackingChoices(bench),
    rateCardsOf(db, shop),
    parcelCountsOf(db, { from: addDays(today, -DAYS_OF_ZONES), to: today }),
  ]);
  const card = cards.find((each) => holdsOn(each, today))?.card ?? null;
  const { zones, isKnown } = zoneShares(card?.zones ?? [], counts);
  const read = listingQuestion(query, shop.measures);
  const isType = read.kind === "asked" && choices.itemTypes.some(({ id }) => id === read.question.itemTypeId);
  const answer = isType ? listingAnswer(read.question, choices, { card, zones }) : null;
  const typed = (name: string): string => (typeof query[name] === "string" ? query[name] : "");
  const problems = new Map(read.kind === "unreadable" ? Object.entries(read.problems) : []);
  const hasSteps = choices.steps.length > 0;
  return (
    <Page
      width="narrow"
      finding={
        answer === null
          ? "Which weight can this piece promise?"
          : listingFinding(answer, { measures: shop.measures, hasSteps })
      }
      aside="The same reckoning as at the bench: the card's bill, corrected by what such parcels weighed. The carrier's own rates and size rules decide."
    >
      <ListingForm choices={choices} typed={typed} problems={problems} />
      {answer === null ? null : <ListingFacts answer={answer} choices={choices} hasZones={isKnown} />}
      <p className={styles.links}>
        {hasSteps ? null : <ButtonLink href="/postage#add">Add a rate card</ButtonLink>}
        <ButtonLink href="/pack" tone="plain">
          Back to the bench
        </ButtonLink>
      </p>
    </Page>
  );
}
