import type { Metadata } from "next";
import { ButtonLink } from "../../_parts/button-link";
import { Page } from "../../_parts/page";
import { shopNow } from "../../_parts/shop-now";
import { readPackingChoices } from "../read-packing-choices";
import { SeveralParcels } from "./_parts/several-parcels";

export const metadata: Metadata = { title: "Several parcels" };

/** Parcels from memory or from receipts: the day once, a row each. */
export default async function SeveralPage() {
  const shop = await shopNow();
  const choices = await readPackingChoices(shop);
  return (
    <Page
      finding="Which parcels went out?"
      aside="The day once, then a row for each parcel. Each is packed by its card; what was different is changed on the parcel's own page."
      actions={
        <ButtonLink href="/pack" tone="plain">
          Back to the bench
        </ButtonLink>
      }
    >
      {choices.itemTypes.length === 0 ? (
        <ButtonLink href="/recipes/start" tone="primary">
          Copy starter recipes
        </ButtonLink>
      ) : (
        <SeveralParcels choices={choices} />
      )}
    </Page>
  );
}
