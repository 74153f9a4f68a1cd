import type { SeasonProfile } from "#lib/forecast/season-profile";
import { Section } from "../../_parts/section";
import { partDays, partName, percentWords, seasonWords } from "../season-words";
import styles from "./season.module.css";
import table from "./table.module.css";

const WIDTH = 390;
const HEIGHT = 120;
const BAR = 22;
const STEP = WIDTH / 13;
const FLOOR = HEIGHT - 22;
const MONTHS = [
  { letters: "Jan", at: 0 },
  { letters: "Apr", at: 3.2 },
  { letters: "Jul", at: 6.45 },
  { letters: "Oct", at: 9.7 },
];

/** The year's shape in words, and as thirteen bars where one is believed. */
export function Season({ season }: { readonly season: SeasonProfile }) {
  const { finding, basis } = seasonWords(season);
  const isShown = season.believed > 0;
  const top = Math.max(...season.factors, 1);
  const height = (factor: number) => (factor / top) * (FLOOR - 6);
  return (
    <Section title={finding} id="season" aside={basis}>
      {isShown ? (
        <>
          <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} className={styles.year} role="img" aria-label={finding}>
            {season.factors.map((factor, part) => (
              <rect
                key={partName(part)}
                x={part * STEP + (STEP - BAR) / 2}
                y={FLOOR - height(factor)}
                width={BAR}
                height={height(factor)}
                className={styles.part}
              />
            ))}
            <line x1={0} x2={WIDTH} y1={FLOOR - height(1)} y2={FLOOR - height(1)} className={styles.usual} />
            {MONTHS.map(({ letters, at }) => (
              <text key={letters} x={at * STEP + 4} y={HEIGHT - 4} className={styles.month}>
                {letters}
              </text>
            ))}
          </svg>
          <p className={styles.note}>
            Bars: each thirteenth of the year; dashed line: as usual. The season is counted into every
            forecast.
          </p>
          <details className={table.details}>
            <summary>The season as a table</summary>
            <table className={table.table}>
              <thead>
                <tr>
                  <th scope="col">Days of the year</th>
                  <th scope="col">Goes out</th>
                </tr>
              </thead>
              <tbody>
                {season.factors.map((factor, part) => (
                  <tr key={partName(part)}>
                    <th scope="row">{partDays(part)}</th>
                    <td>{percentWords(factor)}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </details>
        </>
      ) : null}
    </Section>
  );
}
