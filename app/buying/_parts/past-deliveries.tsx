import Link from "next/link";
import { formatDay } from "#lib/units/day-text";
import { classList } from "../../_parts/class-list";
import { Section } from "../../_parts/section";
import { latenessWords, type PastDelivery } from "../expected-deliveries";
import { orderHref } from "../order-words";
import styles from "./buying.module.css";

const SHOWN = 10;

/** What came lately, and how late. */
export function PastDeliveries({ past }: { readonly past: readonly PastDelivery[] }) {
  const shown = past.slice(0, SHOWN);
  if (shown.length === 0) return null;
  const late = shown.filter((delivery) => delivery.daysLate > 0).length;
  const title =
    late === 0
      ? "The last deliveries came by their day"
      : `${late} of the last ${shown.length} deliveries came late`;
  return (
    <Section title={title} id="came">
      <table className={styles.table}>
        <caption className={styles.caption}>Deliveries, newest first</caption>
        <thead>
          <tr>
            <th scope="col">Came on</th>
            <th scope="col">What</th>
            <th scope="col">From</th>
            <th scope="col">Against the expected day</th>
          </tr>
        </thead>
        <tbody>
          {shown.map((delivery) => (
            <tr key={`${delivery.order.id} ${delivery.on}`}>
              <td>{formatDay(delivery.on, { weekday: true })}</td>
              <th scope="row" className={styles.name}>
                <Link href={orderHref(delivery.order.id)}>
                  {delivery.lines.map((line) => line.supply).join(", ")}
                </Link>
              </th>
              <td>{delivery.order.supplierName}</td>
              <td className={classList(delivery.daysLate > 0 && styles.late)}>
                {latenessWords(delivery.daysLate)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </Section>
  );
}
