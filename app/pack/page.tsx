import type { Metadata } from "next";
import { parcelsPacked } from "#prisma/records/parcels-packed";
import { ButtonLink } from "../_parts/button-link";
import { FollowsRecords } from "../_parts/follows-records";
import { Page } from "../_parts/page";
import { shopNow } from "../_parts/shop-now";
import { PackingDesk } from "./_parts/packing-desk";
import { ReopensOffline } from "./_parts/reopens-offline";
import { buildId } from "./build-id";
import { packedTodayFinding } from "./packed-today-finding";
import { readPackingChoices } from "./read-packing-choices";

export const metadata: Metadata = { title: "Pack" };

/** What do I reach for, which carton, what will it weigh, and is it recorded? */
export default async function PackPage() {
  const shop = await shopNow();
  const [choices, packedToday, build] = await Promise.all([
    readPackingChoices(shop),
    parcelsPacked(shop.db, shop.today, shop.today),
    buildId(),
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
    <Page
      finding={packedTodayFinding(packedToday)}
      actions={
        <>
          <ButtonLink href="/pack/listing" tone="plain">
            What to promise
          </ButtonLink>
          <ButtonLink href="/pack/several" tone="plain">
            Several from memory
          </ButtonLink>
        </>
      }
    >
      {build === null ? null : <ReopensOffline build={build} />}
      <FollowsRecords version={shop.version} />
      <PackingDesk choices={choices} readAt={Date.parse(shop.now)} />
    </Page>
  );
}
