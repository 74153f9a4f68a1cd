import type { Day } from "#lib/units/day";
import { formatMoney } from "#lib/units/money";
import type { Shop } from "#prisma/records/shop";
import type { MonthSpend } from "#prisma/records/spending";
import { Section } from "../../_parts/section";
import { monthWords, spendFinding } from "../spend-finding";
import { type SpendMonth, spendMonths } from "../spend-months";
import styles from "./buying.module.css";

type SpendingProps = {
  readonly spending: readonly MonthSpend[];
  readonly shop: Shop;
  readonly today: Day;
};

/** What was spent on supplies, by month; by supplier in the table behind. */
export function Spending({ spending, shop, today }: SpendingProps) {
  const { months, suppliers } = spendMonths(spending);
  const [latest] = months;
  if (latest === undefined) return null;
  const money = (minor: number) => formatMoney(minor, shop.currency, shop.minorDigits);
  const most = Math.max(...months.map((month) => month.minor), 1);
  const withoutPrice = spending.reduce((sum, each) => sum + each.withoutPrice, 0);
  return (
    <Section
      title={spendFinding(months, today, money)}
      id="spending"
      aside={`Goods, delivery and tax of what came, in ${shop.currency}.${
        withoutPrice === 0 ? "" : ` ${withoutPrice} lines had no price and are left out.`
      }`}
    >
      <ul className={styles.bars}>
        {months.map((month) => (
          <li key={month.month} className={styles.barRow}>
            <span>{monthWords(month.month)}</span>
            <span
              className={styles.bar}
              style={{ inlineSize: `${(month.minor / most) * 100}%` }}
              aria-hidden="true"
            />
            <span className={styles.figure}>{money(month.minor)}</span>
          </li>
        ))}
      </ul>
      <details className={styles.details}>
        <summary>By supplier, as a table</summary>
        <SpendTable months={months} suppliers={suppliers} money={money} />
      </details>
    </Section>
  );
}

type SpendTableProps = {
  readonly months: readonly SpendMonth[];
  readonly suppliers: readonly string[];
  readonly money: (minor: number) => string;
};

function SpendTable({ months, suppliers, money }: SpendTableProps) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls sideways must be reached by keys (WCAG 2.1.1)
    <section className={styles.wide} tabIndex={0} aria-label="Spending by month and supplier">
      <table className={styles.matrix}>
        <caption className={styles.caption}>Spending by month and supplier</caption>
        <thead>
          <tr>
            <th scope="col">Month</th>
            {suppliers.map((supplier) => (
              <th key={supplier} scope="col" className={styles.figure}>
                {supplier}
              </th>
            ))}
            <th scope="col" className={styles.figure}>
              Together
            </th>
          </tr>
        </thead>
        <tbody>
          {months.map((month) => (
            <tr key={month.month}>
              <th scope="row">{monthWords(month.month)}</th>
              {suppliers.map((supplier) => (
                <td key={supplier} className={styles.figure}>
                  {month.bySupplier.has(supplier) ? money(month.bySupplier.get(supplier) ?? 0) : "–"}
                </td>
              ))}
              <td className={styles.figure}>{money(month.minor)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
