import type { BrokenInCommon } from "#lib/packing/breakage/broken-in-common";
import { luckWords } from "../luck-words";
import styles from "./common-list.module.css";

type CommonListProps = { readonly rows: readonly { readonly row: BrokenInCommon; readonly name: string }[] };

const TRAITS = { "item-type": "Item type", style: "Cushion style", carton: "Carton", recipe: "Recipe" };
const VERDICTS = { "stands-out": "stands out", "may-be-luck": "may be luck", "too-few": "too few to tell" };

/** Traits of broken parcels, each with its numbers and how far they say anything. */
export function CommonList({ rows }: CommonListProps) {
  return (
    <ul className={styles.list}>
      {rows.map(({ row, name }) => (
        <li key={`${row.trait} ${row.value}`} className={styles.line}>
          <span className={styles.name}>
            {name}
            <span className={styles.trait}>{TRAITS[row.trait]}</span>
          </span>
          <span>
            <strong className={row.verdict === "stands-out" ? styles.out : styles.quiet}>
              {VERDICTS[row.verdict]}
            </strong>
            <span className={styles.words}>{luckWords(row)}</span>
          </span>
        </li>
      ))}
    </ul>
  );
}
