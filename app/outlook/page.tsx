import type { Metadata } from "next";
import Link from "next/link";
import { Message } from "../_parts/message";
import { Page } from "../_parts/page";
import { Section } from "../_parts/section";
import { DayProblem } from "./_parts/day-problem";
import { EventsAhead } from "./_parts/events-ahead";
import { Fan } from "./_parts/fan";
import { FirstOutlook } from "./_parts/first-outlook";
import { OutlookTable } from "./_parts/outlook-table";
import styles from "./_parts/outlook-table.module.css";
import { Season } from "./_parts/season";
import { basisWords } from "./basis-words";
import { fanTitle } from "./fan-title";
import { leansOn } from "./leans-on";
import { outlookNow, withDay } from "./outlook-now";
import { readOutlook, WEEKS_LISTED } from "./read-outlook";
import { outlookGround, readSubject } from "./read-subject";
import { shopFinding } from "./shop-finding";
import { SHOP_SUBJECT } from "./subject";
import type { Query } from "./what-if-form";

export const metadata: Metadata = { title: "Outlook" };

type OutlookProps = { readonly searchParams: Promise<Query> };

/** Outlook: what will be used in the coming weeks, how sure that is, and how it was worked out. */
export default async function OutlookPage({ searchParams }: OutlookProps) {
  const { db, shop, today, asked } = await outlookNow((await searchParams).today);
  const ground = await outlookGround(db, shop, today);
  const { kept, calendar, serviceLevel } = ground;
  const [facts, { supplies, itemTypes, unused, events, names }] = await Promise.all([
    readSubject(db, { subject: SHOP_SUBJECT, shop, today, ground }),
    readOutlook(db, kept, { today, calendar, serviceLevel }),
  ]);
  if (facts === null && supplies.length === 0 && itemTypes.length === 0) return <FirstOutlook />;
  const leaning =
    facts === null ? null : leansOn(facts.forecast, { guessedParcels: shop.guessedParcels, likeName: null });
  return (
    <Page
      finding={shopFinding(facts?.totals[WEEKS_LISTED - 1] ?? null, facts?.past.weeks ?? [])}
      aside={basisWords(today, { until: kept.until, guessedShare: facts?.forecast.guessedShare ?? 0 })}
    >
      <DayProblem asked={asked} today={today} />
      {leaning === null ? null : <Message kind="note" title={leaning} />}
      {facts === null ? null : (
        <Fan facts={facts} title={fanTitle(facts.weeks, "parcel")}>
          <p>
            <Link href={withDay(SHOP_SUBJECT.href, asked)}>How the parcels were worked out</Link>
          </p>
        </Fan>
      )}
      {supplies.length === 0 ? null : (
        <Section
          title="What the supplies will take"
          id="supplies"
          aside="In the next 4 weeks, today counted; beside it the band that holds 8 times in 10."
        >
          <OutlookTable head="Supply" rows={supplies} asked={asked} />
        </Section>
      )}
      {unused.length === 0 ? null : (
        <p className={styles.unused}>No use is expected of {unused.map(({ name }) => name).join(", ")}.</p>
      )}
      {itemTypes.length === 0 ? null : (
        <Section
          title="What will be sold"
          id="item-types"
          aside="Pieces in the next 4 weeks, today counted; beside it the band that holds 8 times in 10."
        >
          <OutlookTable head="Item type" rows={itemTypes} asked={asked} />
        </Section>
      )}
      <Season season={kept.season} />
      <EventsAhead events={events} names={names} />
    </Page>
  );
}
