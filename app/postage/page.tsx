import type { Metadata } from "next";
import { rateCardsOf } from "#prisma/records/rate-cards";
import { zonesOf } from "#prisma/records/zones";
import { ButtonLink } from "../_parts/button-link";
import { Page } from "../_parts/page";
import { RecordForm } from "../_parts/record-form";
import { Section } from "../_parts/section";
import { shopNow } from "../_parts/shop-now";
import { RateCardView } from "./_parts/rate-card-view";
import { keepRateCard } from "./actions";
import { postageFinding } from "./postage-finding";
import { rateCardFields } from "./rate-card-fields";

export const metadata: Metadata = { title: "Postage" };

/** The rates that the shop pays, by service and days. */
export default async function PostagePage() {
  const { db, shop, today } = await shopNow();
  const [cards, zones] = await Promise.all([rateCardsOf(db, shop), zonesOf(db)]);
  return (
    <Page
      finding={postageFinding(cards, today)}
      aside="As you typed them. The carrier's own published rates and size rules decide."
    >
      {cards.map((kept) => (
        <RateCardView key={kept.id} kept={kept} shop={shop} zones={zones} today={today} />
      ))}
      <Section
        title="Add a rate card"
        id="add"
        {...(zones.length === 0
          ? { aside: "A table has a column for each zone: add your zones in Setup first." }
          : {})}
      >
        {zones.length === 0 ? (
          <ButtonLink href="/setup#zones">Add zones</ButtonLink>
        ) : (
          <RecordForm
            action={keepRateCard.bind(null, null)}
            label="New rate card"
            fields={rateCardFields(null, zones, today)}
            submit="Keep this card"
            tone="primary"
          />
        )}
      </Section>
    </Page>
  );
}
