import type { Metadata } from "next";
import { addDays } from "#lib/units/day";
import { rateCardsOf } from "#prisma/records/rate-cards";
import { parcelsByZone, zonesOf } from "#prisma/records/zones";
import { ButtonLink } from "../_parts/button-link";
import { FollowsRecords } from "../_parts/follows-records";
import { Page } from "../_parts/page";
import { RecordForm } from "../_parts/record-form";
import { Section } from "../_parts/section";
import { shopNow } from "../_parts/shop-now";
import { CardFiles } from "./_parts/card-files";
import styles from "./_parts/postage.module.css";
import { ServiceSection } from "./_parts/service-section";
import { ZoneList } from "./_parts/zone-list";
import { keepRateCard } from "./actions";
import { postageFinding, sourceWords } from "./postage-finding";
import { rateCardFields } from "./rate-card-fields";
import { shopServices } from "./shop-services";

export const metadata: Metadata = { title: "Postage" };

const HALF_YEAR_DAYS = 182;

/** Which rates does the shop pay, until when, and where do its parcels go? */
export default async function PostagePage() {
  const { db, shop, today, version } = await shopNow();
  const [cards, zones, parcels] = await Promise.all([
    rateCardsOf(db, shop),
    zonesOf(db, { retired: true }),
    parcelsByZone(db, { from: addDays(today, 1 - HALF_YEAR_DAYS), to: today }),
  ]);
  const services = shopServices(cards, today);
  const holding = services[0]?.holding ?? null;
  const inUse = zones.filter(({ retired }) => !retired);
  const names = inUse.map(({ name }) => name);
  return (
    <Page
      finding={postageFinding(services, today)}
      aside={`${holding === null ? "" : `${sourceWords(holding)} `}As they were typed or imported here; the program does not know the carrier’s present prices. The carrier’s own published rates and size rules decide.`}
      actions={
        cards.length === 0 ? undefined : (
          <>
            <ButtonLink href="/postage/try" tone="primary">
              Try a parcel
            </ButtonLink>
            <ButtonLink href="/postage/paid">Check what was paid</ButtonLink>
          </>
        )
      }
    >
      <FollowsRecords version={version} />
      <div className={styles.services}>
        {services.map((each, at) => (
          <ServiceSection key={each.service} of={each} isMain={at === 0} zones={zones} today={today} />
        ))}
      </div>
      <ZoneList
        zones={inUse.map(({ id, name }) => ({ id, name, parcels: parcels.get(id) ?? 0 }))}
        without={parcels.get(null) ?? 0}
      />
      <Section
        title="Add a rate card"
        id="add"
        {...(inUse.length === 0
          ? { aside: "A table has a column for each zone: add your zones first." }
          : {})}
      >
        {inUse.length === 0 ? null : (
          <RecordForm
            action={keepRateCard.bind(null, null)}
            label="New rate card"
            {...rateCardFields(null, names, today)}
            submit="Keep this card"
            tone="primary"
          />
        )}
      </Section>
      <CardFiles zones={names} currency={shop.currency} hasCards={cards.length > 0} />
    </Page>
  );
}
