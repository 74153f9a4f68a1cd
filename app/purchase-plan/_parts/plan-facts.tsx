import type { PurchasePlan } from "#lib/purchasing/plan/purchase-plan";
import { addDays, type Day } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import { proofWords } from "../plan-words";
import styles from "./purchase-plan.module.css";

type PlanFactsProps = {
  readonly plan: PurchasePlan;
  readonly today: Day;
  readonly inMoney: (minor: number) => string;
  readonly supplierOf: (supplierId: string) => string;
};

const DAYS_A_WEEK = 7;

/** How the plan was made and what it comes to, part by part, for who asks. */
export function PlanFacts({ plan, today, inMoney, supplierOf }: PlanFactsProps) {
  const { costs, proof } = plan;
  const later = plan.orders.filter(({ week }) => week > 0);
  return (
    <details className={styles.facts}>
      <summary>How this plan was made</summary>
      <p>{proofWords(plan)}</p>
      <table className={styles.table}>
        <caption>What 13 weeks come to</caption>
        <tbody>
          <Row label="Goods" value={inMoney(costs.goodsMinor)} />
          <Row label="Delivery" value={inMoney(costs.deliveryMinor)} />
          <Row label="Your own time for orders" value={inMoney(Math.round(costs.handlingMinor))} />
          <Row label="Keeping stock" value={inMoney(Math.round(costs.holdingMinor))} />
          <Row label="Worth of what is left then" value={`− ${inMoney(Math.round(costs.endValueMinor))}`} />
          {proof.boundMinor === null ? null : (
            <Row label="Proven: no plan comes to less than" value={inMoney(Math.floor(proof.boundMinor))} />
          )}
          <Row label="Worked out in" value={`${proof.seconds.toFixed(1)} s`} />
        </tbody>
      </table>
      {later.length === 0 ? null : (
        <>
          <p>What comes after this week, as it looks today; it is worked out anew each time.</p>
          <ul className={styles.later}>
            {later.map((order) => (
              <li key={`${order.week} ${order.supplierId}`}>
                Week from {formatDay(addDays(today, order.week * DAYS_A_WEEK))}:{" "}
                {supplierOf(order.supplierId)}, {inMoney(order.goodsMinor + order.deliveryMinor)}
              </li>
            ))}
          </ul>
        </>
      )}
      <p>
        Goods and delivery are reckoned from the offers’ own prices. Keeping stock costs the yearly share that
        you set under Setup. Prices and uses are what is known today; a supplier’s own terms decide.
      </p>
    </details>
  );
}

function Row({ label, value }: { readonly label: string; readonly value: string }) {
  return (
    <tr>
      <th scope="row">{label}</th>
      <td>{value}</td>
    </tr>
  );
}
