import Link from "next/link";
import { formatDay } from "#lib/units/day-text";
import { ButtonLink } from "../../_parts/button-link";
import { Section } from "../../_parts/section";
import { type ExpectedDelivery, latenessWords } from "../expected-deliveries";
import { linesWords, orderHref } from "../order-words";
import styles from "./buying.module.css";

/** What is on order, by the day it is expected. */
export function Deliveries({ expected }: { readonly expected: readonly ExpectedDelivery[] }) {
  if (expected.length === 0) {
    return (
      <Section title="No delivery is expected" id="expected">
        <p>
          Mark an order as placed on <Link href="/">This week</Link>, or write one below; it stands here until
          it comes.
        </p>
      </Section>
    );
  }
  return (
    <Section title="Expected" id="expected" rule="strong">
      <ul className={styles.list}>
        {expected.map((delivery) => (
          <li key={`${delivery.order.id} ${delivery.on}`} className={styles.row}>
            <span className={styles.day}>{formatDay(delivery.on, { weekday: true })}</span>
            <div className={styles.what}>
              <Link href={orderHref(delivery.order.id)} className={styles.name}>
                {linesWords(delivery.lines)}
              </Link>
              <span className={styles.aside}>
                {delivery.order.supplierName}, {delivery.order.status}
                {delivery.daysLate === 0 ? null : (
                  <strong className={styles.late}> {latenessWords(delivery.daysLate)}</strong>
                )}
              </span>
            </div>
            <ButtonLink href={`${orderHref(delivery.order.id)}/receive`}>It came</ButtonLink>
          </li>
        ))}
      </ul>
    </Section>
  );
}
