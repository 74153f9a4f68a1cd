import type { Metadata } from "next";
import { itemTypesOf } from "#prisma/records/item-types";
import { parcelCount, parcelsOf } from "#prisma/records/parcel-lists";
import { suppliesOf } from "#prisma/records/supplies";
import { zonesOf } from "#prisma/records/zones";
import { ButtonLink } from "../_parts/button-link";
import { FollowsRecords } from "../_parts/follows-records";
import { Page } from "../_parts/page";
import { shopNow } from "../_parts/shop-now";
import { FoundLine } from "./_parts/found-line";
import { NoParcels } from "./_parts/no-parcels";
import { OlderParcels } from "./_parts/older-parcels";
import { ParcelFilter } from "./_parts/parcel-filter";
import { ParcelList } from "./_parts/parcel-list";
import { filterProblems } from "./filter-problems";
import { type AddressQuery, parcelFilterFrom } from "./parcel-filter-from";
import { parcelsFinding } from "./parcels-finding";
import { readParcelsSeen } from "./read-parcels-seen";

export const metadata: Metadata = { title: "Parcels" };
const PARCELS_PER_PAGE = 50;

type ParcelsPageProps = { readonly searchParams: Promise<AddressQuery> };

/** What did I send, what did packing each cost, what broke, what needs correcting? */
export default async function ParcelsPage({ searchParams }: ParcelsPageProps) {
  const shop = await shopNow();
  const query = await searchParams;
  const filter = parcelFilterFrom(query);
  const { before: _page, ...asked } = filter;
  const [itemTypes, supplies, zones, parcels, count, seen] = await Promise.all([
    itemTypesOf(shop.db, { retired: true }),
    suppliesOf(shop.db, { retired: true }),
    zonesOf(shop.db),
    parcelsOf(shop.db, { ...filter, limit: PARCELS_PER_PAGE }),
    parcelCount(shop.db, asked),
    readParcelsSeen(shop),
  ]);
  const isFiltered = Object.keys(asked).length > 0;
  return (
    <Page
      finding={parcelsFinding(seen)}
      aside="Newest first. Cost is that of the materials, as they stood on the day packed."
      actions={
        <>
          <ButtonLink href="/pack">Pack the next one</ButtonLink>
          <ButtonLink href="/parcels/broken" tone="plain">
            What broke
          </ButtonLink>
          <ButtonLink href="/parcels/costs" tone="plain">
            What packing costs
          </ButtonLink>
        </>
      }
    >
      <FollowsRecords version={shop.version} />
      <ParcelFilter
        itemTypes={itemTypes}
        cartons={supplies.filter(({ kind }) => kind === "carton")}
        zones={zones}
        filter={filter}
        problems={filterProblems(query)}
      />
      <FoundLine count={count} filter={filter} isFiltered={isFiltered} />
      {parcels.length === 0 ? (
        <NoParcels isFiltered={isFiltered || filter.before !== undefined} />
      ) : (
        <ParcelList parcels={parcels} shop={shop.shop} />
      )}
      {parcels.length === PARCELS_PER_PAGE ? (
        <OlderParcels filter={filter} last={parcels.at(-1)?.id ?? ""} />
      ) : null}
    </Page>
  );
}
