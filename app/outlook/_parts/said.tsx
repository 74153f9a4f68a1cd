import type { SaidSum } from "#lib/forecast/shop/subject-forecast";
import { formatDay } from "#lib/units/day-text";
import { Section } from "../../_parts/section";
import { bookedFigure, figure, unitTitle } from "../quantity";
import type { SubjectFacts } from "../read-subject";
import { saidScore, saidWords } from "../said-score";
import { SaidChart } from "./chart";
import chart from "./chart.module.css";
import type { SaidPoint } from "./said-drawing";
import styles from "./table.module.css";

/** What the forecast would have said of past sums, and what came. */
export function Said({ facts }: { readonly facts: SubjectFacts }) {
  const { past, subject, serviceLevel } = facts;
  const { said, horizonWeeks } = past;
  if (said.length === 0) {
    return (
      <Section title="What it would have said" id="said">
        <p>
          There are too few weeks to look back yet. Until then nothing here shows how good this forecast is.
        </p>
      </Section>
    );
  }
  const { finding, aside } = saidWords(saidScore(said), { horizonWeeks, serviceLevel });
  const weeks = horizonWeeks === 1 ? "one week" : `${horizonWeeks} weeks`;
  const unit = unitTitle(subject.unit);
  return (
    <Section title={finding} id="said" aside={`What it would have said, by what was known then. ${aside}`}>
      <p className={chart.axis}>
        {unit} over {weeks}, by the first day of the sum
      </p>
      <SaidChart label={finding} points={said.map(pointOf)} />
      <ul className={chart.legend} aria-label="What the chart shows">
        <li>
          <span className={chart.inside} /> came, inside the band
        </li>
        <li>
          <span className={chart.outside} /> came, outside
        </li>
        <li>
          <span className={chart.expected} /> expected then
        </li>
        <li>
          <span className={chart.eightInTen} /> 8 times in 10
        </li>
      </ul>
      <details className={styles.details}>
        <summary>What it would have said, as a table</summary>
        <table className={styles.table}>
          <caption>
            {unit} over {weeks}, the newest first
          </caption>
          <thead>
            <tr>
              <th scope="col">From</th>
              <th scope="col" className={styles.figure}>
                Expected
              </th>
              <th scope="col" className={styles.figure}>
                8 times in 10
              </th>
              <th scope="col" className={styles.figure}>
                Enough
              </th>
              <th scope="col" className={styles.figure}>
                Came
              </th>
            </tr>
          </thead>
          <tbody>
            {said.toReversed().map((sum) => (
              <tr key={sum.from}>
                <th scope="row">{formatDay(sum.from, { year: true })}</th>
                <td className={styles.figure}>{figure(sum.expected)}</td>
                <td className={styles.figure}>
                  {figure(sum.low)} to {figure(sum.high)}
                </td>
                <td className={styles.figure}>{figure(sum.enough)}</td>
                <td className={styles.figure}>
                  {bookedFigure(sum.actual)}
                  {isInside(sum) ? null : <span className={styles.aside}>outside</span>}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </details>
    </Section>
  );
}

function isInside({ low, high, actual }: SaidSum): boolean {
  return low <= actual && actual <= high;
}

function pointOf(sum: SaidSum): SaidPoint {
  return {
    from: sum.from,
    expected: sum.expected,
    band: [sum.low, sum.high],
    inside: isInside(sum) ? sum.actual : null,
    outside: isInside(sum) ? null : sum.actual,
  };
}
