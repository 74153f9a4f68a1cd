import type { Metadata } from "next";
import { itemTypesOf } from "#prisma/records/item-types";
import { plannedEventsOf } from "#prisma/records/planned-events";
import { ButtonLink } from "../../_parts/button-link";
import { Page } from "../../_parts/page";
import { RecordForm } from "../../_parts/record-form";
import { Section } from "../../_parts/section";
import { shopNow } from "../../_parts/shop-now";
import { EventList } from "./_parts/event-list";
import { FirstEvent } from "./_parts/first-event";
import { keepEvent } from "./actions";
import { eventFields } from "./event-fields";
import { eventsFinding } from "./events-finding";

export const metadata: Metadata = { title: "Planned events" };

/** Days on which the seller expects to sell more or less than usual. */
export default async function PlannedEventsPage() {
  const { db, today } = await shopNow();
  const [events, itemTypes] = await Promise.all([plannedEventsOf(db), itemTypesOf(db, { retired: true })]);
  const ahead = events.filter((event) => event.toDay >= today);
  const over = events.filter((event) => event.toDay < today);
  return (
    <Page
      finding={eventsFinding(events, today)}
      aside="Planned events: days on which you sell more or less than usual. How much is your guess, and Outlook says so."
      actions={<ButtonLink href="/outlook">Back to Outlook</ButtonLink>}
    >
      {events.length === 0 ? <FirstEvent /> : null}
      {ahead.length === 0 ? null : (
        <Section
          title="What is on or comes"
          aside="Where two events fall on one day, both count: twice as much and half as much again make three times as much."
        >
          <EventList events={ahead} itemTypes={itemTypes} />
        </Section>
      )}
      {over.length === 0 ? null : (
        <Section
          title="What is over"
          aside="Taken out of the history, so that these days do not count as usual trade."
        >
          <EventList events={over.toReversed()} itemTypes={itemTypes} />
        </Section>
      )}
      <Section title="Plan an event" id="plan">
        <RecordForm
          action={keepEvent.bind(null, null)}
          label="New event"
          fields={eventFields(null, itemTypes)}
          submit="Plan the event"
          tone="primary"
        />
      </Section>
    </Page>
  );
}
