import type { Metadata } from "next";
import { ButtonLink } from "../_parts/button-link";
import { FollowsRecords } from "../_parts/follows-records";
import { Page } from "../_parts/page";
import { shopNow } from "../_parts/shop-now";
import { StartChoices } from "./_parts/start-choices";
import { SupplyTable } from "./_parts/supply-table";
import { suppliesFinding } from "./supplies-finding";
import { suppliesNow } from "./supplies-now";
import { supplyRows } from "./supply-rows";

export const metadata: Metadata = { title: "Supplies" };

/** What is on the shelf, where it went and what it costs. */
export default async function SuppliesPage() {
  const { db, shop, today, version } = await shopNow();
  const { supplies, stock, usePerWeek } = await suppliesNow(db, shop, today);
  const rows = supplyRows(supplies, {
    stock,
    usePerWeek,
    currency: shop.currency,
    minorDigits: shop.minorDigits,
  });
  return (
    <Page
      finding={suppliesFinding(rows)}
      aside="Use is what This week reckons with; open a supply to see where it went."
      actions={
        rows.length === 0 ? (
          <StartChoices />
        ) : (
          <>
            <ButtonLink href="/supplies/count" tone="primary">
              Count
            </ButtonLink>
            <ButtonLink href="/supplies/new">Add a supply</ButtonLink>
          </>
        )
      }
    >
      <FollowsRecords version={version} />
      {rows.length === 0 ? null : <SupplyTable rows={rows} />}
    </Page>
  );
}
