import type { SupplyBill } from "#lib/packing/bill-by-supply";
import type { Shop } from "#prisma/records/shop";
import { costWords } from "../cost-words";
import { massWords } from "../mass-words";
import styles from "./card-comes-to.module.css";

/** A line of a table of sums; `amount` is what it takes, in words. */
type SumLine = Pick<SupplyBill, "mass" | "book" | "replacement"> & {
  readonly name: string;
  readonly amount?: string;
};

type SumTableProps = {
  readonly caption: string;
  /** What a line is: a card, a supply. */
  readonly head: string;
  readonly lines: readonly SumLine[];
  /** Whether buying again costs another price, which then has a column of its own. */
  readonly hasTwoPrices: boolean;
  readonly shop: Pick<Shop, "currency" | "minorDigits" | "measures">;
};

/** What cards or supplies weigh and cost, a line each. */
export function SumTable({ caption, head, lines, hasTwoPrices, shop }: SumTableProps) {
  return (
    <table className={styles.table}>
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">{head}</th>
          <th scope="col">Weighs</th>
          <th scope="col">{hasTwoPrices ? "In the books" : "Costs"}</th>
          {hasTwoPrices ? <th scope="col">Bought again</th> : null}
        </tr>
      </thead>
      <tbody>
        {lines.map(({ name, amount, mass, book, replacement }) => (
          <tr key={name}>
            <th scope="row">
              {name}
              {amount === undefined ? null : <span className={styles.amount}>{amount}</span>}
            </th>
            <td>{massWords(mass, shop.measures)}</td>
            <td>{costWords(book, shop)}</td>
            {hasTwoPrices ? <td>{costWords(replacement, shop)}</td> : null}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
