import type { PromiseLine } from "../promise-lines";
import { promiseWords } from "../promise-words";
import styles from "./costs.module.css";

type PromiseListProps = {
  readonly lines: readonly PromiseLine[];
  readonly nameOf: (itemTypeId: string) => string;
};

/** Promises of weight kept and broken, by item type. */
export function PromiseList({ lines, nameOf }: PromiseListProps) {
  return (
    <dl className={styles.list}>
      {lines.map((line) => (
        <div key={line.itemTypeId ?? "all"} className={styles.line}>
          <dt>{line.itemTypeId === null ? "All together" : nameOf(line.itemTypeId)}</dt>
          <dd>{promiseWords(line)}</dd>
        </div>
      ))}
    </dl>
  );
}
