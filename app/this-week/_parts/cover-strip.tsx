import type { CSSProperties } from "react";
import { classList } from "../../_parts/class-list";
import type { RowTone } from "../action-words";
import type { CoverAxis } from "../cover-axis";
import type { CoverMarks } from "../cover-marks";
import styles from "./cover-strip.module.css";

type CoverStripProps = { readonly marks: CoverMarks; readonly tone: RowTone };

/** One supply's line on the shared time axis: how far the stock reaches, and what could arrive when. */
export function CoverStrip({ marks, tone }: CoverStripProps) {
  return (
    <div role="img" aria-label={marks.words} className={classList(styles.strip, styles[tone])}>
      {marks.bar === null ? null : (
        <>
          <span className={styles.solid} style={{ width: `${marks.bar.careful}%` }} />
          <span
            className={styles.fading}
            style={{ ...at(marks.bar.careful), width: `${marks.bar.likely - marks.bar.careful}%` }}
          />
        </>
      )}
      <span className={styles.pin} style={at(marks.arrival)} />
      {marks.onTheWay.map((mark) => (
        <span key={mark.words} className={styles.ring} style={at(mark.percent)} />
      ))}
    </div>
  );
}

function at(percent: number): CSSProperties {
  return { insetInlineStart: `${percent}%` };
}

/**
 * The weeks of the axis for the strips in an element with this style, which draw a line where each begins.
 *
 * @param axis - the axis of the strips
 * @returns the style
 */
export function weekLines({ ticks, days }: CoverAxis): CSSProperties {
  return { "--first-week": `${ticks[0]?.percent ?? 0}%`, "--week": `${700 / days}%` } as CSSProperties;
}

/** The dates over the strips. */
export function CoverDates({ axis }: { readonly axis: CoverAxis }) {
  return (
    <div className={styles.dates} aria-hidden="true">
      {axis.ticks.map((tick) => (
        <span key={tick.day} className={styles.date} style={at(tick.percent)}>
          {tick.words}
        </span>
      ))}
    </div>
  );
}

/** What the marks of the strips mean. */
export function CoverLegend() {
  return (
    <ul className={styles.legend} aria-label="The marks of the strips">
      <li>
        <span className={classList(styles.sample, styles.stock)} aria-hidden="true">
          <span className={styles.solid} style={{ width: "100%" }} />
        </span>
        stock lasts, careful estimate
      </li>
      <li>
        <span className={classList(styles.sample, styles.stock)} aria-hidden="true">
          <span className={styles.fading} style={{ width: "100%" }} />
        </span>
        to the likely end
      </li>
      <li>
        <span className={styles.sampleMark} aria-hidden="true">
          <span className={styles.pin} style={at(50)} />
        </span>
        an order placed today arrives
      </li>
      <li>
        <span className={styles.sampleMark} aria-hidden="true">
          <span className={styles.ring} style={at(50)} />
        </span>
        already on its way
      </li>
    </ul>
  );
}
