import { randomUUID } from "node:crypto";
import type { Metadata } from "next";
import { Page } from "../_parts/page";
import { RecordForm } from "../_parts/record-form";
import { Section } from "../_parts/section";
import { shopNow } from "../_parts/shop-now";
import { CalendarFeed } from "./_parts/calendar-feed";
import { Deliveries } from "./_parts/deliveries";
import { Drafts } from "./_parts/drafts";
import { LeadTimes } from "./_parts/lead-times";
import { PastDeliveries } from "./_parts/past-deliveries";
import { PriceHistory } from "./_parts/price-history";
import { Spending } from "./_parts/spending";
import { buyingFinding } from "./buying-finding";
import { buyingNow } from "./buying-now";
import { startDraft } from "./draft-actions";
import { expectedDeliveries, pastDeliveries } from "./expected-deliveries";
import { leadTimeRows } from "./lead-time-rows";

export const metadata: Metadata = { title: "Buying" };

/** What is on order, what came and how late, what was spent, and what a use unit cost. */
export default async function BuyingPage() {
  const { db, shop, today } = await shopNow();
  const now = await buyingNow(db, today);
  const expected = expectedDeliveries(now.onOrder, today);
  return (
    <Page
      finding={buyingFinding(expected, now.drafts.length)}
      aside="Orders are suggested on This week; here they are placed, received and looked back at."
    >
      <Deliveries expected={expected} />
      <Drafts drafts={now.drafts} offers={now.offers} shop={shop}>
        <details>
          <summary>Write an order by hand</summary>
          <RecordForm
            action={startDraft}
            label="New order"
            layout="line"
            fields={[
              { name: "id", label: "", kind: "hidden", value: randomUUID() },
              {
                name: "supplierId",
                label: "Supplier",
                kind: "choice",
                choices: now.suppliers.map((supplier) => ({ value: supplier.id, words: supplier.name })),
              },
            ]}
            submit="Start the draft"
          />
        </details>
      </Drafts>
      <LeadTimes rows={leadTimeRows(now.suppliers, now.deliveries, today)} />
      <PastDeliveries past={pastDeliveries([...now.onOrder, ...now.past])} />
      <Spending spending={now.spending} shop={shop} today={today} />
      <PriceHistory prices={now.prices} shop={shop} />
      <Section title="In your calendar" id="calendar">
        <CalendarFeed />
      </Section>
    </Page>
  );
}
