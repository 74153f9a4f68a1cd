import type { SubjectForecast } from "#lib/forecast/shop/subject-forecast";
import { figure, unitTitle } from "../quantity";
import type { SubjectFacts } from "../read-subject";
import { type RunningTotal, runningTotals } from "../running-totals";
import { whatIfWords } from "../what-if-words";
import styles from "./table.module.css";

const WEEKS_SHOWN = [1, 4, 13];
const WEEKS_SAID = 4;

type WhatIfAnswerProps = {
  readonly facts: SubjectFacts;
  /** null: nothing would be used */
  readonly changed: SubjectForecast | null;
};

/** What the change would do, beside the forecast as it stands. */
export function WhatIfAnswer({ facts, changed }: WhatIfAnswerProps) {
  const { totals, subject, today, calendar, serviceLevel } = facts;
  const totalsThen = changed === null ? [] : runningTotals(changed, { today, calendar, serviceLevel });
  const nothing = { mean: 0, low: 0, high: 0, enough: 0 };
  const rows = totals
    .filter(({ weeks }) => WEEKS_SHOWN.includes(weeks))
    .map((now) => ({ now, after: totalsThen.find(({ weeks }) => weeks === now.weeks) ?? nothing }));
  const said = rows.find(({ now }) => now.weeks === WEEKS_SAID);
  return (
    <div role="status" className={styles.answer}>
      {said === undefined ? null : (
        <p>
          <strong>{whatIfWords(said.now, said.after, { weeks: WEEKS_SAID, unit: subject.unit })}</strong>
        </p>
      )}
      <table className={styles.table}>
        <caption>{unitTitle(subject.unit)} from today on: expected, and 8 times in 10</caption>
        <thead>
          <tr>
            <th scope="col">Weeks</th>
            <th scope="col" className={styles.figure}>
              As forecast
            </th>
            <th scope="col" className={styles.figure}>
              With the change
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ now, after }) => (
            <tr key={now.weeks}>
              <th scope="row">{now.weeks}</th>
              <SumCell sum={now} />
              <SumCell sum={after} />
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function SumCell({ sum }: { readonly sum: Pick<RunningTotal, "mean" | "low" | "high"> }) {
  return (
    <td className={styles.figure}>
      {figure(sum.mean)}
      <span className={styles.aside}>
        {figure(sum.low)} to {figure(sum.high)}
      </span>
    </td>
  );
}
