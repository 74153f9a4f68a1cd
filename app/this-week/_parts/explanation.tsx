"use client";

import Link from "next/link";
import { useState } from "react";
import type { CheckRow } from "#lib/replenishment/weekly-check";
import styles from "./explanation.module.css";

type ExplanationProps = {
  readonly supplyId: string;
  readonly supply: string;
  readonly lines: CheckRow["explanation"];
};

/**
 * Opens a row: each figure behind its sentence, with the dates and the assumption it rests on. The lines are drawn when
 * they are asked for: those of sixty supplies would be most of the page.
 */
export function Explanation({ supplyId, supply, lines }: ExplanationProps) {
  const [opened, setOpened] = useState(false);
  if (lines.length === 0) return null;
  return (
    <details
      // Opened before this script ran: no toggle is told of then.
      ref={(details) => {
        if (details?.open === true) setOpened(true);
      }}
      onToggle={() => setOpened(true)}
    >
      <summary className={styles.summary}>
        How<span className={styles.hidden}> the figures of {supply} are</span> worked out
      </summary>
      {opened ? <Lines supplyId={supplyId} lines={lines} /> : null}
    </details>
  );
}

function Lines({ supplyId, lines }: Omit<ExplanationProps, "supply">) {
  return (
    <>
      <dl className={styles.lines}>
        {lines.map((line) => (
          <div key={line.label} className={styles.line}>
            <dt>{line.label}</dt>
            <dd>
              <span className={styles.value}>{line.value}</span>
              {line.note ? <span className={styles.note}>{line.note}</span> : null}
            </dd>
          </div>
        ))}
      </dl>
      <p>
        <Link href={`/outlook/supplies/${supplyId}`} className={styles.more}>
          How this forecast was made
        </Link>
      </p>
    </>
  );
}
