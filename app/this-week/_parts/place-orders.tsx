import { randomUUID } from "node:crypto";
import Link from "next/link";
import type { ReactNode } from "react";
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
  /** What is said of the plan, above the orders. */
  readonly above: ReactNode;
  /** How the plan was made, below them. */
  readonly below: ReactNode;
};

/** The orders of this week, one for each supplier, and the urgent supplies that nobody is known to sell. */
export function PlaceOrders({ drafts, rows, day, asked, shop, above, below }: PlaceOrdersProps) {
  const withoutOffer = rows.filter(
    (row) => (row.action === "order-today" || row.action === "order-this-week") && row.offerId === null,
  );
  return (
    <Section title={titleOf(drafts)} rule="strong" id="plan">
      {above}
      {drafts.map((draft) => (
        <PurchaseDraftForm
          key={`${draft.supplierId} ${draft.lines.map((line) => `${line.offerId} ${line.packs}`).join(" ")}`}
          draft={draft}
          purchaseId={randomUUID()}
          placedOn={day}
          today={asked}
          money={{ currency: shop.currency, minorDigits: shop.minorDigits }}
        />
      ))}
      {withoutOffer.map((row) => (
        <p key={row.supplyId}>
          {row.supply} is urgent, and no supplier is known who has it.{" "}
          <Link href={`/supplies/${row.supplyId}`}>Say who sells it</Link>.
        </p>
      ))}
      {below}
    </Section>
  );
}

function titleOf(drafts: readonly PurchaseDraft[]): string {
  if (drafts.length === 0) return "No order this week";
  return drafts.length > 1 ? "Place these orders" : "Place this order";
}
