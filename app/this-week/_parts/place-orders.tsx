import { randomUUID } from "node:crypto";
import Link from "next/link";
import type { CheckRow } from "#lib/replenishment/weekly-check";
import type { Day } from "#lib/units/day";
import type { Shop } from "#prisma/records/shop";
import { Section } from "../../_parts/section";
import type { PurchaseDraft } from "../purchase-draft";
import { PurchaseDraftForm } from "./purchase-draft-form";

type PlaceOrdersProps = {
  readonly drafts: readonly PurchaseDraft[];
  readonly rows: readonly CheckRow[];
  readonly day: Day;
  /** The day that the address asked for, if it did. */
  readonly asked: Day | null;
  readonly shop: Pick<Shop, "currency" | "minorDigits">;
};

/** The orders of this week, one for each supplier, and the urgent supplies that nobody is known to sell. */
export function PlaceOrders({ drafts, rows, day, asked, shop }: PlaceOrdersProps) {
  const withoutOffer = rows.filter(
    (row) => (row.action === "order-today" || row.action === "order-this-week") && row.offerId === null,
  );
  if (drafts.length === 0 && withoutOffer.length === 0) return null;
  return (
    <Section title={drafts.length > 1 ? "Place these orders" : "Place this order"} rule="strong">
      {drafts.map((draft) => (
        <PurchaseDraftForm
          key={draft.supplierId}
          draft={draft}
          purchaseId={randomUUID()}
          placedOn={day}
          today={asked}
          money={{ currency: shop.currency, minorDigits: shop.minorDigits }}
        />
      ))}
      {withoutOffer.map((row) => (
        <p key={row.supplyId}>
          {row.supply} is urgent, and no supplier is known for it.{" "}
          <Link href={`/supplies/${row.supplyId}`}>Say who sells it</Link>.
        </p>
      ))}
    </Section>
  );
}
