import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { purchaseOf } from "#prisma/records/purchase-orders";
import { offersOf } from "#prisma/records/suppliers";
import { ButtonLink } from "../../../_parts/button-link";
import { Page } from "../../../_parts/page";
import { shopNow } from "../../../_parts/shop-now";
import { orderSheet, sheetText } from "../../order-sheet";
import { orderHref } from "../../order-words";
import { CopyText } from "./_parts/copy-text";
import styles from "./_parts/sheet.module.css";
import { SheetTable } from "./_parts/sheet-table";

export const metadata: Metadata = { title: "Order sheet" };

type SheetPageProps = { readonly params: Promise<{ readonly id: string }> };

/** An order on half a page, for printing, copying and sending. */
export default async function SheetPage({ params }: SheetPageProps) {
  const { db, shop } = await shopNow();
  const order = await purchaseOf(db, decodeURIComponent((await params).id));
  if (order === null) notFound();
  const prices = new Map((await offersOf(db)).map((offer) => [offer.id, offer]));
  const sheet = orderSheet(order, prices, shop);
  const id = encodeURIComponent(order.id);
  return (
    <Page finding={sheet.supplier} aside={sheet.head} width="narrow">
      <SheetTable sheet={sheet} />
      <div className={styles.screenOnly}>
        <CopyText text={sheetText(sheet)} />
        <p className={styles.links}>
          <ButtonLink href={`/api/order-sheet/${id}.csv`}>Download as CSV</ButtonLink>
          <ButtonLink href={orderHref(order.id)} tone="plain">
            Back to the order
          </ButtonLink>
        </p>
      </div>
    </Page>
  );
}
