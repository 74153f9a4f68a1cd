import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { offerChangesOfPurchase } from "#prisma/records/offer-changes";
import { purchaseOf } from "#prisma/records/purchase-orders";
import { offersOf, suppliersOf } from "#prisma/records/suppliers";
import { suppliesOf } from "#prisma/records/supplies";
import { ButtonLink } from "../../_parts/button-link";
import { Message } from "../../_parts/message";
import { Page } from "../../_parts/page";
import { RecordForm } from "../../_parts/record-form";
import { Section } from "../../_parts/section";
import { shopNow } from "../../_parts/shop-now";
import { offerChangeFields } from "../offer-change-form";
import { keepOfferChanges } from "../order-actions";
import { orderFinding } from "../order-finding";
import { orderHref } from "../order-words";
import { DraftActions } from "./_parts/draft-actions";
import { OrderCancel } from "./_parts/order-cancel";
import { OrderTable } from "./_parts/order-table";

export const metadata: Metadata = { title: "Order" };

type OrderPageProps = {
  readonly params: Promise<{ readonly id: string }>;
  readonly searchParams: Promise<Readonly<Record<string, string | string[] | undefined>>>;
};

/** One order: its lines, how far it is, and what can be done with it. */
export default async function OrderPage({ params, searchParams }: OrderPageProps) {
  const { db, shop, today } = await shopNow();
  const id = decodeURIComponent((await params).id);
  const { placed, received, changed } = await searchParams;
  const order = await purchaseOf(db, id);
  if (order === null) notFound();
  const [offers, suppliers, supplies, changes] = await Promise.all([
    offersOf(db),
    suppliersOf(db),
    suppliesOf(db, { retired: true }),
    offerChangesOfPurchase(db, id),
  ]);
  const isOpen = order.lines.some((line) => line.open !== null) && order.status !== "draft";
  const supplier = suppliers.find((each) => each.id === order.supplierId) ?? null;
  return (
    <Page
      finding={orderFinding(order, today)}
      aside={order.note}
      actions={
        <>
          {isOpen ? (
            <ButtonLink href={`${orderHref(id)}/receive`} tone="primary">
              It came
            </ButtonLink>
          ) : null}
          {order.lines.length === 0 ? null : (
            <ButtonLink href={`${orderHref(id)}/sheet`}>Order sheet</ButtonLink>
          )}
          <ButtonLink href="/buying" tone="plain">
            All orders
          </ButtonLink>
        </>
      }
    >
      {placed === undefined ? null : (
        <Message kind="done" title="The order is placed.">
          It counts as on order until it comes or is cancelled.
        </Message>
      )}
      {received === undefined ? null : (
        <Message kind="done" title="Booked into stock.">
          Its cost, with its share of delivery and tax, is in the ledger of each supply.
        </Message>
      )}
      {changed === undefined ? null : (
        <Message kind="done" title="The offers are changed.">
          This week’s plan reckons with them from now on.
        </Message>
      )}
      {changes.length === 0 ? null : (
        <Section
          title="What came is not what the offer says"
          aside="Next week’s plan reckons with the offers: tick what should count from now on."
          rule="strong"
        >
          <RecordForm
            action={keepOfferChanges.bind(null, id)}
            label="Change the offers"
            fields={offerChangeFields(changes, shop)}
            submit="Change the offers"
          />
        </Section>
      )}
      <OrderTable order={order} offers={offers} shop={shop} />
      {order.status === "draft" ? (
        <DraftActions
          order={order}
          offers={offers}
          supplies={supplies}
          supplier={supplier}
          shop={shop}
          today={today}
        />
      ) : (
        <OrderCancel order={order} />
      )}
    </Page>
  );
}
