"use client";

import dynamic from "next/dynamic";
import styles from "./chart.module.css";
import type { FanDrawingProps } from "./fan-drawing";
import type { SaidPoint } from "./said-drawing";

// The drawings come after the page: its words and tables do not wait for them.
const FanDrawing = dynamic(() => import("./fan-drawing").then((file) => file.FanDrawing), { ssr: false });
const SaidDrawing = dynamic(() => import("./said-drawing").then((file) => file.SaidDrawing), { ssr: false });

type Labelled = {
  /** what the chart shows, in words */
  readonly label: string;
};

/** Fan chart; the same figures stand in the table behind it. */
export function FanChart({ label, ...drawing }: Labelled & FanDrawingProps) {
  return (
    <div role="img" aria-label={label} className={styles.chart}>
      <FanDrawing {...drawing} />
      <noscript>The chart needs scripts; its figures stand in the table below.</noscript>
    </div>
  );
}

/** Chart of past sums; the same figures stand in the table behind it. */
export function SaidChart({ label, points }: Labelled & { readonly points: readonly SaidPoint[] }) {
  return (
    <div role="img" aria-label={label} className={styles.chart}>
      <SaidDrawing points={points} />
      <noscript>The chart needs scripts; its figures stand in the table below.</noscript>
    </div>
  );
}
