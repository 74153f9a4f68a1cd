import { type Amount, amount, unitsOf } from "#lib/units/amount";
import { formatAmount } from "#lib/units/amount-text";
import { formatDay } from "#lib/units/day-text";
import { type UseUnit, unitWord } from "#lib/units/use-unit";
import { Section } from "../../../_parts/section";
import { niceTop } from "../nice-top";
import { findingOfUse } from "../use-finding";
import type { UseWeek } from "../use-weeks";
import styles from "./use-chart.module.css";

const WIDTH = 720;
const HEIGHT = 220;
const LEFT = 72;
const TOP = 16;
const BOTTOM = 36;
const LABELS = 5;

type UseChartProps = { readonly weeks: readonly UseWeek[]; readonly unit: UseUnit };

/** Use by week: packed and spoilt as one bar each, with the same figures as a table behind it. */
export function UseChart({ weeks, unit }: UseChartProps) {
  if (weeks.length === 0) {
    return (
      <Section title="No use yet">
        <p>Nothing has moved. Count this supply, or record a parcel whose recipe takes it.</p>
      </Section>
    );
  }
  const finding = findingOfUse(weeks, unit);
  return (
    <Section title={finding} id="use">
      <p className={styles.axis}>{unitsWords(unit)} a week</p>
      <Bars weeks={weeks} finding={finding} />
      <p className={styles.legend}>
        <span className={styles.packedKey} /> packed <span className={styles.spoiltKey} /> spoilt
        <span className={styles.runningKey} /> this week, not over
      </p>
      <UseTable weeks={weeks} unit={unit} />
    </Section>
  );
}

function unitsWords(unit: UseUnit): string {
  const word = unitWord(unit, 2);
  return word === "" ? "number" : word;
}

function Bars({ weeks, finding }: Pick<UseChartProps, "weeks"> & { readonly finding: string }) {
  const top = niceTop(Math.max(...weeks.map((week) => unitsOf(amount(week.packed + week.spoilt)))));
  const height = (units: number) => (Math.max(0, units) / top) * (HEIGHT - TOP - BOTTOM);
  const step = (WIDTH - LEFT) / weeks.length;
  const floor = HEIGHT - BOTTOM;
  const every = Math.ceil(weeks.length / LABELS);
  return (
    <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} className={styles.chart} role="img" aria-label={finding}>
      {[0, top / 2, top].map((tick) => (
        <g key={tick}>
          <line
            x1={LEFT}
            x2={WIDTH}
            y1={floor - height(tick)}
            y2={floor - height(tick)}
            className={styles.grid}
          />
          <text x={LEFT - 8} y={floor - height(tick) + 4} textAnchor="end" className={styles.label}>
            {tick}
          </text>
        </g>
      ))}
      {weeks.map((week, index) => {
        const packed = height(unitsOf(week.packed));
        const spoilt = height(unitsOf(week.spoilt));
        const x = LEFT + index * step + step * 0.15;
        const bar = { x, width: step * 0.7 };
        return (
          <g key={week.weekStart} className={week.isRunning ? styles.running : undefined}>
            <rect {...bar} y={floor - packed} height={packed} className={styles.packed} />
            <rect {...bar} y={floor - packed - spoilt} height={spoilt} className={styles.spoilt} />
            {(weeks.length - 1 - index) % every === 0 ? (
              <text
                x={index === weeks.length - 1 ? WIDTH : x + step * 0.35}
                y={HEIGHT - 8}
                textAnchor={index === weeks.length - 1 ? "end" : "middle"}
                className={styles.label}
              >
                {formatDay(week.weekStart)}
              </text>
            ) : null}
          </g>
        );
      })}
    </svg>
  );
}

function UseTable({ weeks, unit }: UseChartProps) {
  const words = (value: Amount) => (value === 0 ? "–" : formatAmount(value, "each"));
  return (
    <details className={styles.details}>
      <summary>Where it went, as a table</summary>
      <table className={styles.table}>
        <caption className={styles.axis}>{unitsWords(unit)}, by week</caption>
        <thead>
          <tr>
            <th scope="col">Week of</th>
            <th scope="col">Packed</th>
            <th scope="col">Spoilt</th>
            <th scope="col">Came in</th>
            <th scope="col">Count found</th>
          </tr>
        </thead>
        <tbody>
          {weeks.toReversed().map((week) => (
            <tr key={week.weekStart}>
              <th scope="row">
                {formatDay(week.weekStart)}
                {week.isRunning ? " (not over)" : ""}
              </th>
              <td>{words(week.packed)}</td>
              <td>{words(week.spoilt)}</td>
              <td>{words(week.cameIn)}</td>
              <td>
                {week.countDifference > 0 ? `+${words(week.countDifference)}` : words(week.countDifference)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}
