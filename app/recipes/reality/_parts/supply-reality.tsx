import Link from "next/link";
import type { CardEvidence, SupplyEvidence } from "#prisma/records/card-evidence";
import { stepLines, supplyWords } from "../evidence-words";
import styles from "./reality.module.css";

type SupplyRealityProps = { readonly of: SupplyEvidence; readonly steps: CardEvidence["steps"] };

/** What the counts of a supply say of its cards together, and of each as far as they tell them apart. */
export function SupplyReality({ of, steps }: SupplyRealityProps) {
  const lines = stepLines(of, steps);
  return (
    <li className={styles.row}>
      <p className={styles.line}>
        <Link href={`/supplies/${of.supply.id}`} className={styles.name}>
          {of.supply.name}
        </Link>
        : {supplyWords(of)}
      </p>
      {lines.length === 0 ? null : (
        <details className={styles.fold}>
          <summary>
            {of.supply.name}: {lines.length === 1 ? "its one step" : `${lines.length} steps`}
          </summary>
          <ul className={styles.steps}>
            {lines.map(({ name, words }) => (
              <li key={name}>
                <span className={styles.name}>{name}</span>: {words}
              </li>
            ))}
          </ul>
        </details>
      )}
    </li>
  );
}
