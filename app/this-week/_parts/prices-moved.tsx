import Link from "next/link";
import { formatDay } from "#lib/units/day-text";
import { Section } from "../../_parts/section";
import { changeWords } from "../../buying/price-words";
import type { PriceRow } from "../price-rows";
import styles from "./count-first.module.css";

type PricesMovedProps = {
  readonly rows: readonly PriceRow[];
  readonly nameOf: (supplyId: string) => string;
};

/** Prices that were paid lately and differ from those before; nothing where none moved. */
export function PricesMoved({ rows, nameOf }: PricesMovedProps) {
  if (rows.length === 0) return null;
  return (
    <Section
      title="Prices that moved"
      aside="A used unit’s price as last paid, without delivery, against the time before."
    >
      <ul className={styles.list}>
        {rows.map(({ supplyId, move }) => (
          <li key={supplyId}>
            <Link href={`/supplies/${supplyId}`}>{nameOf(supplyId)}</Link>
            <span className={styles.reason}>
              {changeWords(move.ratioToBefore)} on {formatDay(move.last.on)}
            </span>
          </li>
        ))}
      </ul>
    </Section>
  );
}
