import type { Metadata } from "next";
import { addDays } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import { formatMoney } from "#lib/units/money";
import { paidParcelsOf } from "#prisma/records/paid-parcels";
import { rateCardsOf } from "#prisma/records/rate-cards";
import { zonesOf } from "#prisma/records/zones";
import { ButtonLink } from "../../_parts/button-link";
import { FollowsRecords } from "../../_parts/follows-records";
import { Page } from "../../_parts/page";
import { Section } from "../../_parts/section";
import { shopNow } from "../../_parts/shop-now";
import styles from "../_parts/postage.module.css";
import { readOutsideGround } from "../read-outside-ground";
import { MissedSteps } from "./_parts/missed-steps";
import { PaidTable } from "./_parts/paid-table";
import { MISSED_BY_MG, NOT_TOLD_WORDS, paidCheck } from "./paid-check";
import { paidFinding } from "./paid-finding";

export const metadata: Metadata = { title: "What was paid" };

const SPAN_DAYS = 90;

/** Was more paid for parcels than the cards of their days say, and which missed a step by a little? */
export default async function PaidPage() {
  const { db, shop, today, version } = await shopNow();
  const from = addDays(today, 1 - SPAN_DAYS);
  const [rows, cards, zones, ground] = await Promise.all([
    paidParcelsOf(db, { from, to: today }),
    rateCardsOf(db, shop),
    zonesOf(db, { retired: true }),
    readOutsideGround(db),
  ]);
  const services = [...new Set(cards.map(({ service }) => service))];
  const check = paidCheck(rows, {
    ...ground,
    cards: cards.map(({ card }) => card),
    services,
    measures: shop.measures,
  });
  const told = check.over.length + check.under.length + check.agrees;
  const zoneName = (id: string) => zones.find((zone) => zone.id === id)?.name ?? id;
  const money = (minor: number) => formatMoney(minor, shop.currency, shop.minorDigits);
  return (
    <Page
      finding={paidFinding(check, shop)}
      aside={`Parcels packed since ${formatDay(from, { year: true })}, by scale, zone and the outside of their carton, held against the card of the day they were posted. ${told === 0 ? "" : `${check.agrees} agree to the coin. `}The carrier’s own scale and tape decide: ask there before you claim anything back.`}
      actions={<ButtonLink href="/postage">The cards</ButtonLink>}
    >
      <FollowsRecords version={version} />
      {check.over.length === 0 ? null : (
        <Section title={`Cost more: ${money(check.overMinor)}`} rule="strong">
          <PaidTable caption="Parcels that cost more" rows={check.over} zoneName={zoneName} shop={shop} />
        </Section>
      )}
      {told === 0 ? null : (
        <MissedSteps
          missed={check.missed}
          missedMinor={check.missedMinor}
          mostMg={MISSED_BY_MG[shop.measures]}
          shop={shop}
        />
      )}
      {check.under.length === 0 ? null : (
        <Section
          title={`Cost less: ${money(check.underMinor)}`}
          aside="A gift, another service, or a scale that reads too much."
        >
          <PaidTable caption="Parcels that cost less" rows={check.under} zoneName={zoneName} shop={shop} />
        </Section>
      )}
      {check.notTold.size === 0 ? null : (
        <Section title="Can’t be told">
          <ul className={styles.rules}>
            {[...check.notTold].map(([why, count]) => (
              <li key={why}>
                {count} {NOT_TOLD_WORDS[why]}.
              </li>
            ))}
          </ul>
        </Section>
      )}
    </Page>
  );
}
