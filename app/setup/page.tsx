import type { Metadata } from "next";
import Link from "next/link";
import { database } from "#prisma/client";
import { shopOf } from "#prisma/records/shop";
import { closuresOf, offersOf, suppliersOf } from "#prisma/records/suppliers";
import { suppliesOf } from "#prisma/records/supplies";
import { Page } from "../_parts/page";
import { RecordForm } from "../_parts/record-form";
import { Section } from "../_parts/section";
import { ClosedDays } from "./_parts/closed-days";
import { FirstSteps } from "./_parts/first-steps";
import { Suppliers } from "./_parts/suppliers";
import { TakeAway } from "./_parts/take-away";
import { Zones } from "./_parts/zones";
import { firstSteps } from "./first-steps";
import { setupFinding } from "./setup-finding";
import { keepShop } from "./shop-actions";
import { shopFields } from "./shop-fields";

export const metadata: Metadata = { title: "Setup" };

/** The shop, who sells to it, where it sends to, and the way in and out for its data. */
export default async function SetupPage() {
  const db = await database();
  const shop = await shopOf(db);
  const zone = Intl.DateTimeFormat().resolvedOptions().timeZone;
  const form = (
    <RecordForm
      action={keepShop}
      label="Shop"
      fields={shopFields(shop, zone)}
      submit={shop === null ? "Start the shop" : "Save the shop"}
      tone="primary"
    />
  );
  if (shop === null) {
    return (
      <Page
        width="narrow"
        finding="Start your shop: its name, its clock and its units."
        aside="No price is needed to begin. Everything can be changed later."
      >
        {form}
      </Page>
    );
  }
  const [steps, suppliers, closures, supplies, offers] = await Promise.all([
    firstSteps(db),
    suppliersOf(db),
    closuresOf(db),
    suppliesOf(db),
    offersOf(db),
  ]);
  const offered = new Set(offers.map((offer) => offer.supplyId));
  const withoutOffer = supplies.filter((supply) => !offered.has(supply.id)).length;
  return (
    <Page
      finding={setupFinding(shop.name, steps)}
      aside="The shop, its suppliers, its calendar, and its data in and out."
    >
      <FirstSteps steps={steps} />
      <Suppliers
        suppliers={suppliers.map((supplier) => ({
          ...supplier,
          closures: closures.filter((span) => span.supplierId === supplier.id),
        }))}
        shop={shop}
        suppliesWithoutOffer={withoutOffer}
      />
      <Section title="The shop" id="shop">
        {form}
        <p>
          <Link href="/setup/trial">Try other goals, order sizes and days between looks in a trial run</Link>{" "}
          before you change them here.
        </p>
      </Section>
      <Zones db={db} />
      <ClosedDays db={db} />
      <Section title="Other devices" id="devices">
        <p>
          <Link href="/setup/devices">Let phones and tablets of your home network in</Link>, each paired once.
        </p>
      </Section>
      <TakeAway />
    </Page>
  );
}
