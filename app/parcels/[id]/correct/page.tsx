import type { Metadata } from "next";
import { notFound, redirect } from "next/navigation";
import { parcelOf } from "#prisma/records/parcel-lists";
import { ButtonLink } from "../../../_parts/button-link";
import { Page } from "../../../_parts/page";
import { shopNow } from "../../../_parts/shop-now";
import { PackingDesk } from "../../../pack/_parts/packing-desk";
import { readPackingChoices } from "../../../pack/read-packing-choices";
import { draftOfParcel } from "../../draft-of-parcel";

export const metadata: Metadata = { title: "Correct a parcel" };
type CorrectPageProps = { readonly params: Promise<{ readonly id: string }> };

/** The parcel on the bench again, as it was recorded, to be put right. */
export default async function CorrectPage({ params }: CorrectPageProps) {
  const shop = await shopNow();
  const parcel = await parcelOf(shop.db, decodeURIComponent((await params).id));
  if (parcel === null) notFound();
  const address = `/parcels/${encodeURIComponent(parcel.id)}`;
  if (parcel.voidedAt !== null) redirect(address);
  const choices = await readPackingChoices(shop, parcel);
  return (
    <Page
      finding="Put the parcel right."
      aside="Changing pieces, style or day fills the card anew from the recipe. The ledger keeps the old lines and their reversal."
      actions={
        <ButtonLink href={address} tone="plain">
          Leave it as it is
        </ButtonLink>
      }
    >
      <PackingDesk choices={choices} correcting={draftOfParcel(parcel, choices)} />
    </Page>
  );
}
