import type { Metadata } from "next";
import { itemTypesOf } from "#prisma/records/item-types";
import { parcelsOf } from "#prisma/records/parcel-lists";
import { ButtonLink } from "../_parts/button-link";
import { Page } from "../_parts/page";
import { shopNow } from "../_parts/shop-now";
import { NoParcels } from "./_parts/no-parcels";
import { OlderParcels } from "./_parts/older-parcels";
import { ParcelFilter } from "./_parts/parcel-filter";
import { ParcelList } from "./_parts/parcel-list";
import { parcelFilterFrom } from "./parcel-filter-from";
import { parcelsFinding } from "./parcels-finding";
import { readParcelsSeen } from "./read-parcels-seen";

export const metadata: Metadata = { title: "Parcels" };
const PARCELS_PER_PAGE = 50;

type ParcelsPageProps = { readonly searchParams: Promise<Record<string, string | string[] | undefined>> };

/** What did I send, what did packing each cost, what broke, what needs correcting? */
export default async function ParcelsPage({ searchParams }: ParcelsPageProps) {
  const shop = await shopNow();
  const filter = parcelFilterFrom(await searchParams);
  const [itemTypes, parcels, seen] = await Promise.all([
    itemTypesOf(shop.db),
    parcelsOf(shop.db, { ...filter, limit: PARCELS_PER_PAGE }),
    readParcelsSeen(shop),
  ]);
  const isFiltered = Object.keys(filter).length > 0;
  return (
    <Page
      finding={parcelsFinding(seen)}
      aside="Newest first. Cost is that of the materials, as they stood on the day packed."
      actions={<ButtonLink href="/pack">Pack the next one</ButtonLink>}
    >
      <ParcelFilter itemTypes={itemTypes} filter={filter} />
      {parcels.length === 0 ? (
        <NoParcels isFiltered={isFiltered} />
      ) : (
        <ParcelList parcels={parcels} shop={shop.shop} />
      )}
      {parcels.length === PARCELS_PER_PAGE ? (
        <OlderParcels filter={filter} last={parcels.at(-1)?.id ?? ""} />
      ) : null}
    </Page>
  );
}
