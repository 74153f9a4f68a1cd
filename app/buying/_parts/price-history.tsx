import Link from "next/link";
import { invoiceDigits } from "#lib/purchasing/invoice-rate";
import { formatDay } from "#lib/units/day-text";
import { formatMoney } from "#lib/units/money";
import type { Shop } from "#prisma/records/shop";
import { classList } from "../../_parts/class-list";
import { Section } from "../../_parts/section";
import { unitCostWords } from "../../supplies/unit-cost-words";
import type { SupplyPrices } from "../buying-now";
import { changeWords, priceFinding } from "../price-words";
import styles from "./buying.module.css";
import { PriceLine } from "./price-line";

type PriceHistoryProps = { readonly prices: readonly SupplyPrices[]; readonly shop: Shop };

/** What a use unit of each supply cost over time, and whether its price moved. */
export function PriceHistory({ prices, shop }: PriceHistoryProps) {
  if (prices.length === 0) return null;
  return (
    <Section
      title={priceFinding(prices)}
      id="prices"
      aside="Paid for one use unit, without delivery and added tax; the lines show how it moved, each on its own scale. The offer is that of the same supplier, for as many packs."
    >
      <table className={styles.table}>
        <caption className={styles.caption}>Prices by supply</caption>
        <thead>
          <tr>
            <th scope="col">Supply</th>
            <th scope="col">Over time</th>
            <th scope="col" className={styles.figure}>
              Last paid
            </th>
            <th scope="col">Against the time before</th>
            <th scope="col">On offer now</th>
          </tr>
        </thead>
        <tbody>
          {prices.map((row) => (
            <tr key={row.supplyId}>
              <th scope="row" className={styles.name}>
                <Link href={`/supplies/${row.supplyId}#offers`}>{row.supply}</Link>
              </th>
              <td>
                <PriceLine paid={row.paid} />
              </td>
              <td className={styles.figure}>
                {unitCostWords(row.move.last.perUnit, row.unit, shop)}
                <span className={styles.aside}>{formatDay(row.move.last.on, { year: true })}</span>
              </td>
              <td
                className={classList(isDearer(row.move.ratioToBefore) && styles.late)}
                data-label="against before:"
              >
                {changeWords(row.move.ratioToBefore)}
              </td>
              <td
                className={classList(isDearer(row.move.ratioToOffer) && styles.late)}
                data-label="on offer:"
              >
                {changeWords(row.move.ratioToOffer)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <details className={styles.details}>
        <summary>Every price paid, as a table</summary>
        <EveryPrice prices={prices} shop={shop} />
      </details>
    </Section>
  );
}

function isDearer(ratio: number | null): boolean {
  return ratio !== null && changeWords(ratio).endsWith("dearer");
}

function EveryPrice({ prices, shop }: PriceHistoryProps) {
  return (
    <table className={styles.table}>
      <caption className={styles.caption}>Every price paid, newest first</caption>
      <thead>
        <tr>
          <th scope="col">Supply</th>
          <th scope="col">Day</th>
          <th scope="col">From</th>
          <th scope="col">Packs</th>
          <th scope="col" className={styles.figure}>
            Price of a pack
          </th>
          <th scope="col" className={styles.figure}>
            Of a use unit
          </th>
        </tr>
      </thead>
      <tbody>
        {prices.flatMap((row) =>
          row.paid.toReversed().map((price) => (
            <tr key={price.lineId}>
              <th scope="row" className={styles.name}>
                {row.supply}
              </th>
              <td>{formatDay(price.on, { year: true })}</td>
              <td>{price.supplierName ?? "somebody else"}</td>
              <td>
                {price.packs} × {price.packTyped}
              </td>
              <td className={styles.figure}>
                {formatMoney(price.priceMinor, price.currency, invoiceDigits(price.currency, shop))}
              </td>
              <td className={styles.figure}>{unitCostWords(price.perUnit, row.unit, shop)}</td>
            </tr>
          )),
        )}
      </tbody>
    </table>
  );
}
