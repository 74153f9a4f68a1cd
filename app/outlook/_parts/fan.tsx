import type { ReactNode } from "react";
import { formatDay } from "#lib/units/day-text";
import { Section } from "../../_parts/section";
import { chartEvents, chartWeeks } from "../chart-week";
import { eventWords } from "../events/event-words";
import { unitTitle } from "../quantity";
import type { SubjectFacts } from "../read-subject";
import { FanChart } from "./chart";
import styles from "./chart.module.css";
import { WeeksTable } from "./weeks-table";

type FanProps = {
  readonly facts: SubjectFacts;
  /** what the chart shows, in words */
  readonly title: string;
  readonly children?: ReactNode;
};

/** Past weeks and the coming ones with their bands, planned events and closed weeks; a table behind it. */
export function Fan({ facts, title, children }: FanProps) {
  const { weeks, events, names, subject, forecast } = facts;
  const drawn = chartWeeks(weeks);
  const hasPast = weeks.some((week) => week.used !== null);
  return (
    <Section title={title} id="weeks">
      <p className={styles.axis}>{unitTitle(subject.unit)} a week, by week</p>
      <FanChart label={title} weeks={drawn} events={chartEvents(weeks)} thisWeek={forecast.path.firstWeek} />
      <ul className={styles.legend} aria-label="What the chart shows">
        {hasPast ? (
          <li>
            <span className={styles.used} /> {subject.kind === "supply" ? "used" : "sent"}
          </li>
        ) : null}
        <li>
          <span className={styles.expected} /> expected
        </li>
        <li>
          <span className={styles.fiveInTen} /> 5 times in 10
        </li>
        <li>
          <span className={styles.eightInTen} /> 8 times in 10
        </li>
        {drawn.some((week) => week.isClosed) ? (
          <li>
            <span className={styles.closed} /> mostly closed
          </li>
        ) : null}
        {events.length === 0 ? null : (
          <li>
            <span className={styles.event} /> planned event, by its letter
          </li>
        )}
      </ul>
      {events.length === 0 ? null : (
        <ul className={styles.events} aria-label="Planned events on the chart">
          {events.map(({ mark, event }) => (
            <li key={mark}>
              <strong>{mark}</strong> {event.name}, {eventWords(event, names)} (your guess)
            </li>
          ))}
        </ul>
      )}
      {children}
      <WeeksTable weeks={weeks} subject={subject} thisWeek={formatDay(forecast.path.firstWeek)} />
    </Section>
  );
}
