import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { parcelOf } from "#prisma/records/parcel-lists";
import { ButtonLink } from "../../_parts/button-link";
import { Message } from "../../_parts/message";
import { Page } from "../../_parts/page";
import { Section } from "../../_parts/section";
import { shopNow } from "../../_parts/shop-now";
import { BillTable } from "../_parts/bill-table";
import { ParcelActions } from "../_parts/parcel-actions";
import { ParcelCost } from "../_parts/parcel-cost";
import { ParcelFacts } from "../_parts/parcel-facts";
import { ParcelTrace } from "../_parts/parcel-trace";
import { parcelFinding } from "../parcel-finding";

export const metadata: Metadata = { title: "Parcel" };
type ParcelPageProps = { readonly params: Promise<{ readonly id: string }> };

/** One parcel: what it took and cost, what became of it, and what can be put right. */
export default async function ParcelPage({ params }: ParcelPageProps) {
  const { db, shop, today } = await shopNow();
  const parcel = await parcelOf(db, decodeURIComponent((await params).id));
  if (parcel === null) notFound();
  const isVoid = parcel.voidedAt !== null;
  return (
    <Page
      finding={parcelFinding(parcel, shop)}
      actions={
        <>
          {isVoid ? null : (
            <ButtonLink href={`/parcels/${encodeURIComponent(parcel.id)}/correct`}>Correct it</ButtonLink>
          )}
          <ButtonLink href="/parcels" tone="plain">
            All parcels
          </ButtonLink>
        </>
      }
    >
      {isVoid ? <Message kind="note" title={`Void: ${parcel.voidReason ?? "no reason given"}.`} /> : null}
      <ParcelFacts parcel={parcel} shop={shop} />
      <Section
        title="What it took"
        aside="Amounts and costs as they stood; later prices and recipes never change them."
      >
        <BillTable parcel={parcel} shop={shop} />
      </Section>
      <ParcelCost db={db} shop={shop} parcel={parcel} />
      {isVoid ? null : (
        <Section title="What became of it">
          <ParcelActions parcel={parcel} today={today} />
        </Section>
      )}
      <Section
        title="Trace in the ledger"
        aside="Every line that this parcel wrote, oldest first. Nothing is rubbed out."
      >
        <ParcelTrace parcel={parcel} shop={shop} />
      </Section>
    </Page>
  );
}
