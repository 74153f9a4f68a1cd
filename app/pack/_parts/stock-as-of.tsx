import { clockText } from "../clock-text";
import styles from "./pack.module.css";

/** So old may the book's figures be before their age is told, in milliseconds. */
const FRESH_MS = 10 * 60_000;

type StockAsOfProps = {
  /** When the book was read; and now, null until the browser has told it. Milliseconds since 1970. */
  readonly readAt: number;
  readonly now: number | null;
  readonly timeZone: string;
  /** Parcels kept on this device: the book does not know them. */
  readonly kept: number;
};

/** Says how old the stock on the card is, where it is old or where the book does not know all that was packed. */
export function StockAsOf({ readAt, now, timeZone, kept }: StockAsOfProps) {
  if (now === null || (kept === 0 && now - readAt < FRESH_MS)) return null;
  const parcels = kept === 1 ? "the parcel" : `the ${kept} parcels`;
  return (
    <p className={styles.asOf}>
      Stock as of {clockText(readAt, now, timeZone)}
      {kept === 0 ? "" : `, without ${parcels} kept on this device`}.
    </p>
  );
}
