import type { Metadata } from "next";
import { formatDay } from "#lib/units/day-text";
import { formatMoney } from "#lib/units/money";
import { rateCardsOf } from "#prisma/records/rate-cards";
import { zonesOf } from "#prisma/records/zones";
import { ButtonLink } from "../../_parts/button-link";
import { Page } from "../../_parts/page";
import { Section } from "../../_parts/section";
import { shopNow } from "../../_parts/shop-now";
import { draftQuery } from "../../recipes/[id]/draft/draft-choice";
import styles from "../_parts/postage.module.css";
import { Reckoning } from "../_parts/reckoning";
import { outsideSize } from "../outside-size";
import { withZoneNames } from "../rate-card-form";
import { readOutsideGround } from "../read-outside-ground";
import { TryForm } from "./_parts/try-form";
import { askedParcel } from "./asked-parcel";
import { triedService } from "./tried-service";
import { tryFinding } from "./try-finding";

export const metadata: Metadata = { title: "Try a parcel" };

type TryPageProps = {
  readonly searchParams: Promise<Readonly<Record<string, string | string[] | undefined>>>;
};

/** What a parcel would cost with each service, line by line; nothing is kept. */
export default async function TryPage({ searchParams }: TryPageProps) {
  const { db, shop, today } = await shopNow();
  const query = draftQuery(await searchParams);
  const [kept, zones, ground] = await Promise.all([
    rateCardsOf(db, shop),
    zonesOf(db, { retired: true }),
    readOutsideGround(db),
  ]);
  const inUse = zones.filter(({ retired }) => !retired);
  const read = askedParcel(query, { measures: shop.measures, zoneIds: inUse.map(({ id }) => id), today });
  const asked = read.kind === "asked" ? read.asked : null;
  const cartons = ground.cartons.filter(({ retired, lengthUm }) => !retired && lengthUm !== null);
  const size =
    asked === null
      ? null
      : (asked.sizes ?? outsideSize({ supplyId: asked.cartonId, sizesUm: null, cutHeightUm: null }, ground));
  const cards = kept.map((each) => withZoneNames(each, zones).card);
  const services = [...new Set(kept.map(({ service }) => service))];
  const zone = zones.find(({ id }) => id === asked?.zoneId)?.name ?? "";
  const tried =
    asked === null
      ? null
      : services.map((service) =>
          triedService(service, cards, { weight: asked.weight, size, zone, shipDay: asked.shipDay }, shop),
        );
  const problems = new Map(read.kind === "unreadable" ? Object.entries(read.problems) : []);
  return (
    <Page
      finding={tryFinding(tried, shop)}
      aside={`${asked === null ? "Nothing is kept." : `${asked.weight.text} to ${zone} on ${formatDay(asked.shipDay, { year: true })}. Nothing is kept.`} An estimate by the cards that you typed: the carrier’s own rates, scale and tape decide.`}
    >
      {services.length === 0 ? (
        <p>
          No rate card is kept yet. <ButtonLink href="/postage#add">Add one</ButtonLink>
        </p>
      ) : (
        <TryForm
          typed={(name) => query[name] ?? ""}
          problems={problems}
          zones={inUse.map(({ id, name }) => ({ value: id, words: name }))}
          cartons={cartons.map(({ id, name }) => ({ value: id, words: name }))}
          today={today}
        />
      )}
      <div className={styles.services}>
        {(tried ?? []).map(({ service, minor, headline, advice, lines }) => (
          <Section key={service} title={service}>
            {minor === null ? null : (
              <p className={styles.sum}>{formatMoney(minor, shop.currency, shop.minorDigits)}</p>
            )}
            <p>{headline}</p>
            {advice.length === 0 ? null : (
              <ul className={styles.rules}>
                {advice.map((words) => (
                  <li key={words}>{words}</li>
                ))}
              </ul>
            )}
            <Reckoning lines={lines} />
          </Section>
        ))}
      </div>
      <p>
        <ButtonLink href="/postage" tone="plain">
          Back to the cards
        </ButtonLink>
      </p>
    </Page>
  );
}
