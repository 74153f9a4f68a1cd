import { formatDay } from "#lib/units/day-text";
import { Section } from "../../_parts/section";
import { figure, unitTitle } from "../quantity";
import type { SubjectFacts } from "../read-subject";
import styles from "./table.module.css";

const PERCENT = 100;

/** From today on over 1 to 13 weeks: expected, its band, and what is enough. */
export function RunningTotalsTable({ facts }: { readonly facts: SubjectFacts }) {
  const { totals, past, subject, serviceLevel } = facts;
  const times = Number((serviceLevel * PERCENT).toFixed(1));
  const enough =
    subject.kind === "supply" ? `Enough ${times} times in 100` : `Not more, ${times} times in 100`;
  const isMarked = past.tried.length > 0 && subject.kind === "supply";
  return (
    <Section
      title="From today on, added up"
      id="totals"
      aside={
        isMarked
          ? `In bold the weeks that stock must last: from one check over the delivery to the next. ${times} in 100 is the shop’s service level.`
          : `${times} in 100 is the shop’s service level.`
      }
    >
      <table className={styles.table}>
        <caption>{unitTitle(subject.unit)} from today on, today counted</caption>
        <thead>
          <tr>
            <th scope="col">Weeks</th>
            <th scope="col" className={styles.figure}>
              Expected
            </th>
            <th scope="col" className={styles.figure}>
              8 times in 10
            </th>
            <th scope="col" className={styles.figure}>
              {enough}
            </th>
          </tr>
        </thead>
        <tbody>
          {totals.map((total) => (
            <tr
              key={total.weeks}
              className={isMarked && total.weeks === past.horizonWeeks ? styles.marked : undefined}
            >
              <th scope="row">
                {total.weeks} <span className={styles.until}>until {formatDay(total.lastDay)}</span>
              </th>
              <td className={styles.figure}>{figure(total.mean)}</td>
              <td className={styles.figure}>
                {figure(total.low)} to {figure(total.high)}
              </td>
              <td className={styles.figure}>{figure(total.enough)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Section>
  );
}
