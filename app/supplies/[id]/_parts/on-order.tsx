import { randomUUID } from "node:crypto";
import Link from "next/link";
import { scaleAmount } from "#lib/units/amount";
import { formatAmount } from "#lib/units/amount-text";
import { type Day, day } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import type { OpenPurchaseLine } from "#prisma/records/purchases";
import type { Shop } from "#prisma/records/shop";
import { RecordForm } from "../../../_parts/record-form";
import { Section } from "../../../_parts/section";
import { cancelOrder, placeOrder, receive } from "../buying-actions";
import { orderFields } from "../order-fields";
import { receiveFields } from "../receive-fields";
import type { SupplyScreen } from "../supply-screen";
import styles from "./buying.module.css";

type OnOrderProps = { readonly screen: SupplyScreen; readonly shop: Shop; readonly today: Day };

/** What is on its way, what came, and the next order. */
export function OnOrder({ screen, shop, today }: OnOrderProps) {
  const { supply, onOrder, offers, suppliers } = screen;
  return (
    <Section title={onOrder.length === 0 ? "Nothing is on order" : "On its way"} id="on-order">
      <ul className={styles.list}>
        {onOrder.map((line) => (
          <OpenLine key={line.id} line={line} screen={screen} shop={shop} today={today} />
        ))}
      </ul>
      {offers.length === 0 ? null : (
        <details className={styles.details}>
          <summary>Mark an order as placed</summary>
          <RecordForm
            action={placeOrder.bind(null, supply.id)}
            label={`Order ${supply.name}`}
            fields={orderFields(offers, suppliers, today, randomUUID())}
            submit="Mark as ordered"
          />
        </details>
      )}
      <details className={styles.details} id="came-in">
        <summary>Something came in without an order: bought, free or saved</summary>
        <RecordForm
          action={receive.bind(null, supply.id)}
          label={`Receive ${supply.name}`}
          fields={receiveFields({ screen, shop, today, key: randomUUID(), line: null })}
          submit="Book into stock"
        />
      </details>
    </Section>
  );
}

function OpenLine({ line, screen, shop, today }: OnOrderProps & { readonly line: OpenPurchaseLine }) {
  const { supply } = screen;
  const packs = `${line.packs} ${line.packs === 1 ? "pack" : "packs"}`;
  return (
    <li className={styles.row}>
      <div>
        <p className={styles.main}>
          {formatAmount(scaleAmount(line.packAmount, line.packs), supply.useUnit)} due{" "}
          {formatDay(day(line.expectedOn), { weekday: true })}
          {line.expectedOn < today ? <strong className={styles.late}> Late.</strong> : null}
        </p>
        <p className={styles.aside}>
          {packs} from {line.supplierName},{" "}
          <Link href={`/buying/${line.purchaseId}`}>ordered {formatDay(day(line.placedOn))}</Link>
        </p>
      </div>
      <div className={styles.choices}>
        <details className={styles.details}>
          <summary>It came</summary>
          <RecordForm
            action={receive.bind(null, supply.id)}
            label={`Receive ${packs} of ${supply.name} due ${line.expectedOn}, ordered ${line.placedOn}`}
            fields={receiveFields({ screen, shop, today, key: randomUUID(), line })}
            submit="Book into stock"
            tone="primary"
          />
        </details>
        <RecordForm
          action={cancelOrder.bind(null, line.id)}
          label={`Cancel the order of ${packs} due ${line.expectedOn}, ordered ${line.placedOn}`}
          fields={[]}
          submit="Cancel the order"
          tone="plain"
        />
      </div>
    </li>
  );
}
