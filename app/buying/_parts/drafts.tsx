import Link from "next/link";
import type { ReactNode } from "react";
import { formatDay } from "#lib/units/day-text";
import { formatMoney } from "#lib/units/money";
import type { PurchaseOrder } from "#prisma/records/purchase-orders";
import type { Shop } from "#prisma/records/shop";
import type { Offer } from "#prisma/records/suppliers";
import { Section } from "../../_parts/section";
import { orderTotal } from "../order-lines";
import { linesWords, orderHref } from "../order-words";
import styles from "./buying.module.css";

type DraftsProps = {
  readonly drafts: readonly PurchaseOrder[];
  readonly offers: readonly Offer[];
  readonly shop: Shop;
  readonly children: ReactNode;
};

/** Orders that are written and not placed. */
export function Drafts({ drafts, offers, shop, children }: DraftsProps) {
  const prices = new Map(offers.map((offer) => [offer.id, offer]));
  return (
    <Section
      title={drafts.length === 0 ? "No drafts" : "Drafts, not placed yet"}
      id="drafts"
      aside="A draft counts nowhere until it is placed."
    >
      <ul className={styles.list}>
        {drafts.map((draft) => (
          <li key={draft.id} className={styles.row}>
            <span className={styles.day}>{formatDay(draft.placedOn, { weekday: true })}</span>
            <div className={styles.what}>
              <Link href={orderHref(draft.id)} className={styles.name}>
                {linesWords(draft.lines)}
              </Link>
              <span className={styles.aside}>{draft.supplierName}</span>
            </div>
            <span className={styles.figure}>
              {formatMoney(orderTotal(draft, prices).totalMinor, shop.currency, shop.minorDigits)}
            </span>
          </li>
        ))}
      </ul>
      <div className={styles.details}>{children}</div>
    </Section>
  );
}
