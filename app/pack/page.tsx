import type { Metadata } from "next";
import { parcelsPacked } from "#prisma/records/parcels-packed";
import { ButtonLink } from "../_parts/button-link";
import { Page } from "../_parts/page";
import { shopNow } from "../_parts/shop-now";
import { PackingDesk } from "./_parts/packing-desk";
import { packedTodayFinding } from "./packed-today-finding";
import { readPackingChoices } from "./read-packing-choices";

export const metadata: Metadata = { title: "Pack" };

/** What do I reach for, which carton, what will it weigh, and is it recorded? */
export default async function PackPage() {
  const shop = await shopNow();
  const [choices, packedToday] = await Promise.all([
    readPackingChoices(shop),
    parcelsPacked(shop.db, shop.today, shop.today),
  ]);
  if (choices.itemTypes.length === 0) {
    return (
      <Page
        width="narrow"
        finding="Nothing to pack yet: copy the recipes of what you sell."
        aside="Each kind of piece that you send has a recipe; with it, recording a parcel takes three taps."
        actions={
          <>
            <ButtonLink href="/recipes/start" tone="primary">
              Copy starter recipes
            </ButtonLink>
            <ButtonLink href="/recipes/new">Add an item type</ButtonLink>
          </>
        }
      />
    );
  }
  return (
    <Page finding={packedTodayFinding(packedToday)}>
      <PackingDesk choices={choices} />
    </Page>
  );
}
