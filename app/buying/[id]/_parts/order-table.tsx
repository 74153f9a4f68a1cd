import Link from "next/link";
import { invoiceDigits } from "#lib/purchasing/invoice-rate";
import { amountAsTyped, formatAmount } from "#lib/units/amount-text";
import { formatDay } from "#lib/units/day-text";
import { formatMoney } from "#lib/units/money";
import type { OrderArrival, OrderLine, PurchaseOrder } from "#prisma/records/purchase-orders";
import type { Shop } from "#prisma/records/shop";
import type { Offer } from "#prisma/records/suppliers";
import { Section } from "../../../_parts/section";
import styles from "../../_parts/buying.module.css";
import { orderTotal } from "../../order-lines";
import { packWords } from "../../order-sheet";

type OrderTableProps = {
  readonly order: PurchaseOrder;
  readonly offers: readonly Offer[];
  readonly shop: Shop;
};

/** The lines of an order as ordered, with what became of each. */
export function OrderTable({ order, offers, shop }: OrderTableProps) {
  const total = orderTotal(order, new Map(offers.map((offer) => [offer.id, offer])));
  const money = (minor: number | null) =>
    minor === null ? "not known" : formatMoney(minor, shop.currency, shop.minorDigits);
  const isDraft = order.status === "draft";
  if (order.lines.length === 0) return null;
  return (
    <Section title={isDraft ? "What is in it" : "What was ordered"}>
      <table className={styles.table}>
        <caption className={styles.caption}>Lines of the order</caption>
        <thead>
          <tr>
            <th scope="col">Supply</th>
            <th scope="col">Packs</th>
            <th scope="col" className={styles.figure}>
              Price of a pack
            </th>
            <th scope="col" className={styles.figure}>
              Together
            </th>
            {isDraft ? null : <th scope="col">What became of it</th>}
          </tr>
        </thead>
        <tbody>
          {order.lines.map((line, index) => (
            <tr key={line.id}>
              <th scope="row" className={styles.name}>
                <Link href={`/supplies/${line.supplyId}`}>{line.supply}</Link>
                {line.offerRetired ? (
                  <span className={styles.aside}>this offer was withdrawn since</span>
                ) : null}
              </th>
              <td>
                {line.packs} × {packWords(line)}
              </td>
              <td className={styles.figure} data-label="a pack">
                {money(line.priceMinor)}
              </td>
              <td className={styles.figure}>{money(total.sums[index] ?? null)}</td>
              {isDraft ? null : (
                <td className={styles.fates}>
                  <Fate line={line} shop={shop} />
                </td>
              )}
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">Delivery as expected</th>
            <td colSpan={2} />
            <td className={styles.figure}>{money(total.deliveryMinor)}</td>
            {isDraft ? null : <td />}
          </tr>
          <tr>
            <th scope="row">
              Total{total.withoutPrice === 0 ? "" : `, without ${total.withoutPrice} that have no price`}
            </th>
            <td colSpan={2} />
            <td className={styles.figure}>{money(total.totalMinor)}</td>
            {isDraft ? null : <td />}
          </tr>
        </tfoot>
      </table>
    </Section>
  );
}

function Fate({ line, shop }: { readonly line: OrderLine; readonly shop: Shop }) {
  const { open } = line;
  return (
    <>
      {line.arrivals.map((arrival) => (
        <span key={`${arrival.receiptId} ${arrival.packTyped}`} className={styles.fate}>
          {arrivalWords(arrival, line, shop)}
        </span>
      ))}
      {open === null ? null : (
        <span className={styles.fate}>
          {open.packs} {line.arrivals.length === 0 ? "" : "more "}expected{" "}
          {formatDay(open.expectedOn, { weekday: true })}
        </span>
      )}
      {line.closedAs === "cancelled" && line.closedOn !== null ? (
        <span className={styles.fate}>cancelled {formatDay(line.closedOn)}</span>
      ) : null}
    </>
  );
}

/** "2 came 24 Nov, 175 ft each (188 ft ordered), at $28.00" */
function arrivalWords(arrival: OrderArrival, line: OrderLine, shop: Shop): string {
  const isOther = arrival.packAmount !== line.packAmount;
  const pack = isOther
    ? `, ${amountAsTyped(arrival.packAmount, line.unit)} each instead of ${formatAmount(line.packAmount, line.unit)}`
    : "";
  const isDear = arrival.priceMinor !== null && arrival.priceMinor !== line.priceMinor;
  const price =
    isDear && arrival.priceMinor !== null
      ? `, at ${formatMoney(arrival.priceMinor, arrival.currency, invoiceDigits(arrival.currency, shop))}`
      : "";
  return `${arrival.packs} came ${formatDay(arrival.receivedOn)}${pack}${price}`;
}
