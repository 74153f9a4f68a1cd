"use client";

import type { ReactNode } from "react";
import { formatMass } from "#lib/units/mass";
import type { Measures } from "#lib/units/measures";
import { Button } from "../../_parts/button";
import type { ExpectedWeight } from "../expected-weight";
import styles from "./pack.module.css";

type RecordBarProps = {
  readonly weight: ExpectedWeight;
  /** What it must stay under by what was promised; null where nothing was. */
  readonly ceiling: string | null;
  readonly measures: Measures;
  readonly words: string;
  readonly isBusy: boolean;
  readonly isDisabled: boolean;
  readonly onRecord: () => void;
  /** What became of the last parcels; it stands above the button. */
  readonly children: ReactNode;
};

/** The button that records; on a phone it stands above the tabs wherever the screen is scrolled to. */
export function RecordBar({
  weight,
  ceiling,
  measures,
  words,
  isBusy,
  isDisabled,
  onRecord,
  children,
}: RecordBarProps) {
  return (
    <div className={styles.recordBar}>
      {children}
      <div className={styles.recordRow}>
        <span className={styles.barWeight} aria-hidden="true">
          {weight.kind === "expected" ? formatMass(weight.mg, measures) : ""}
          {ceiling === null ? null : <small className={styles.ceiling}>{ceiling}</small>}
        </span>
        <Button tone="primary" isWide isDisabled={isDisabled || isBusy} onPress={onRecord}>
          {isBusy ? "Recording…" : words}
        </Button>
      </div>
    </div>
  );
}
