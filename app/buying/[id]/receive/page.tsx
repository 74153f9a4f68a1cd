import { randomUUID } from "node:crypto";
import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { formatDay } from "#lib/units/day-text";
import { purchaseOf } from "#prisma/records/purchase-orders";
import { suppliesOf } from "#prisma/records/supplies";
import { ButtonLink } from "../../../_parts/button-link";
import { Page } from "../../../_parts/page";
import { RecordForm } from "../../../_parts/record-form";
import { shopNow } from "../../../_parts/shop-now";
import { receiveOrder } from "../../order-actions";
import { orderHref } from "../../order-words";
import { receiveOrderFields } from "../../receive-order-fields";

export const metadata: Metadata = { title: "Receive an order" };

type ReceivePageProps = { readonly params: Promise<{ readonly id: string }> };

/** All that came of an order, in one go: real packs, real prices, and what still comes. */
export default async function ReceivePage({ params }: ReceivePageProps) {
  const { db, shop, today } = await shopNow();
  const order = await purchaseOf(db, decodeURIComponent((await params).id));
  if (order === null) notFound();
  const isOpen = order.status === "placed" || order.status === "partly received";
  const back = (
    <ButtonLink href={orderHref(order.id)} tone="plain">
      Back to the order
    </ButtonLink>
  );
  if (!isOpen) {
    return (
      <Page
        finding={`Nothing of this order is on its way: it is ${order.status}.`}
        actions={back}
        width="narrow"
      />
    );
  }
  const supplies = await suppliesOf(db);
  const { groups, fields } = receiveOrderFields({ order, supplies, shop, today, key: randomUUID() });
  return (
    <Page
      finding={`What came from ${order.supplierName}?`}
      aside={`Ordered ${formatDay(order.placedOn, { weekday: true })}. The fields say what was ordered: type over what was different. Nothing is booked until all of it can be.`}
      actions={back}
    >
      <RecordForm
        action={receiveOrder.bind(null, order.id)}
        label={`Receive from ${order.supplierName}`}
        groups={groups}
        fields={fields}
        submit="Book into stock"
        tone="primary"
      />
    </Page>
  );
}
