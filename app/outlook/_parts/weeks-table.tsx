import { formatDay } from "#lib/units/day-text";
import type { OutlookWeek } from "../outlook-weeks";
import { bookedFigure, figure, unitTitle } from "../quantity";
import type { Subject } from "../subject";
import styles from "./table.module.css";

type WeeksTableProps = {
  readonly weeks: readonly OutlookWeek[];
  readonly subject: Subject;
  /** first day of the running week, as it is shown */
  readonly thisWeek: string;
};

/** The figures behind the fan chart: coming weeks, then past ones, the newest first. */
export function WeeksTable({ weeks, subject, thisWeek }: WeeksTableProps) {
  const coming = weeks.flatMap(({ expected, ...week }) => (expected === null ? [] : [{ ...week, expected }]));
  const past = weeks.filter((week) => week.used !== null).toReversed();
  const unit = unitTitle(subject.unit);
  return (
    <details className={styles.details}>
      <summary>The same as a table</summary>
      <table className={styles.table}>
        <caption>Coming weeks, {unit} a week</caption>
        <thead>
          <tr>
            <th scope="col">Week of</th>
            <th scope="col" className={styles.figure}>
              Expected
            </th>
            <th scope="col" className={styles.figure}>
              5 times in 10
            </th>
            <th scope="col" className={styles.figure}>
              8 times in 10
            </th>
          </tr>
        </thead>
        <tbody>
          {coming.map((week) => (
            <tr key={week.weekStart}>
              <th scope="row">
                {formatDay(week.weekStart)}
                {formatDay(week.weekStart) === thisWeek ? ", this week" : ""}
                <WeekNotes week={week} />
              </th>
              <td className={styles.figure}>{figure(week.expected.mean)}</td>
              <td className={styles.figure}>{week.expected.fiveInTen.map(figure).join(" to ")}</td>
              <td className={styles.figure}>{week.expected.eightInTen.map(figure).join(" to ")}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {past.length === 0 ? null : (
        <PastTable past={past} unit={unit} isRestated={subject.kind === "supply"} />
      )}
    </details>
  );
}

type PastTableProps = {
  readonly past: readonly OutlookWeek[];
  readonly unit: string;
  /** a supply's weeks are told by today's recipes and counts */
  readonly isRestated: boolean;
};

function PastTable({ past, unit, isRestated }: PastTableProps) {
  return (
    <table className={styles.table}>
      <caption>
        Past weeks, {unit} a week
        {isRestated ? "; the chart shows them as they would be by today’s recipes and counts" : ""}
      </caption>
      <thead>
        <tr>
          <th scope="col">Week of</th>
          <th scope="col" className={styles.figure}>
            Booked
          </th>
          {isRestated ? (
            <th scope="col" className={styles.figure}>
              As the forecast counts it
            </th>
          ) : null}
        </tr>
      </thead>
      <tbody>
        {past.map((week) => (
          <tr key={week.weekStart}>
            <th scope="row">
              {formatDay(week.weekStart)}
              <WeekNotes week={week} />
            </th>
            <td className={styles.figure}>{bookedFigure(week.recorded ?? 0)}</td>
            {isRestated ? <td className={styles.figure}>{bookedFigure(week.used ?? 0)}</td> : null}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** Closed days and events of a week. */
function WeekNotes({ week }: { readonly week: Pick<OutlookWeek, "closedDays" | "marks"> }) {
  const closed = week.closedDays === 1 ? "closed one day" : `closed ${week.closedDays} days`;
  const notes = [
    ...(week.closedDays === 0 ? [] : [closed]),
    ...(week.marks.length === 0 ? [] : [`event ${week.marks.join(", ")}`]),
  ];
  return notes.length === 0 ? null : <span className={styles.aside}>{notes.join("; ")}</span>;
}
