import type { CheckRow, WeeklyCheck } from "#lib/replenishment/weekly-check";
import { formatMoney } from "#lib/units/money";
import { ButtonLink } from "../../_parts/button-link";
import { Section } from "../../_parts/section";
import styles from "./count-first.module.css";

type CountFirstProps = {
  readonly toCount: WeeklyCheck["toCount"];
  readonly rows: readonly CheckRow[];
  readonly money: { readonly currency: string; readonly minorDigits: number };
};

/** The supplies whose count could change what to order, each with the reason and what is at stake. */
export function CountFirst({ toCount, rows, money }: CountFirstProps) {
  if (toCount.length === 0) return null;
  const names = new Map(rows.map((row) => [row.supplyId, row.supply]));
  return (
    <Section title="Count these first" rule="strong" aside="A count here could change the order.">
      <ul className={styles.list}>
        {toCount.map((each) => (
          <li key={each.supplyId}>
            <span className={styles.supply}>{names.get(each.supplyId) ?? each.supplyId}</span>
            <span className={styles.reason}>
              {each.reason}
              {each.orderMinor === null || each.orderMinor === 0
                ? ""
                : `: ${formatMoney(each.orderMinor, money.currency, money.minorDigits)}`}
            </span>
          </li>
        ))}
      </ul>
      <ButtonLink href="/supplies/count">Start counting</ButtonLink>
    </Section>
  );
}
