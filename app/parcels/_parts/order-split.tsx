import type { Shop } from "#prisma/records/shop";
import { classList } from "../../_parts/class-list";
import { knownMoney } from "../known-money";
import type { OrderCost, OrderLine } from "../order-costs";
import styles from "./parcels.module.css";

type OrderSplitProps = { readonly lines: readonly OrderLine[]; readonly shop: Shop };

/** What packing cost each order in the parcel, its other parcels told beside. */
export function OrderSplit({ lines, shop }: OrderSplitProps) {
  const rows = lines.flatMap(({ reference, parcels, here, inAll }) => [
    { words: reference, cost: here },
    ...(parcels === 1 ? [] : [{ words: `${reference} in all its ${parcels} parcels`, cost: inAll }]),
  ]);
  const money = (cost: OrderCost["cash"]) => knownMoney(cost.minor, cost.isWhole, shop);
  return (
    <div className={styles.wide}>
      <table className={classList(styles.list, styles.split)}>
        <caption className={styles.caption}>Cost by order</caption>
        <thead>
          <tr>
            <th scope="col">Order</th>
            <th scope="col" className={styles.figure}>
              Cash
            </th>
            <th scope="col" className={styles.figure}>
              At today’s prices
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ words, cost }) => (
            <tr key={words}>
              <th scope="row">{words}</th>
              <td className={styles.figure}>{money(cost.cash)}</td>
              <td className={styles.figure}>{money(cost.replacement)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
