import type { MovedWeights } from "#lib/packing/weight/moved-weights";
import { Section } from "../../../_parts/section";
import { weightWords } from "../weight-words";
import styles from "./costs.module.css";

type WeightMovesProps = { readonly weights: MovedWeights; readonly nameOf: (id: string) => string };

/** Parcels that weigh otherwise than the card says since a day, and readings that were left out. */
export function WeightMoves({ weights: { moved, aside }, nameOf }: WeightMovesProps) {
  if (moved.length === 0 && aside === 0) return null;
  return (
    <Section
      title={moved.length === 0 ? "Readings of the scale" : "Weights that moved"}
      aside="Against the card's bill by today's masses. Weigh a carton, ten pieces and a piece of the item type to find the cause."
    >
      <ul>
        {moved.map((each) => (
          <li key={`${each.itemTypeId} ${each.cartonId} ${each.style}`}>{weightWords(each, nameOf)}</li>
        ))}
      </ul>
      {aside === 0 ? null : (
        <p className={styles.how}>
          {aside === 1 ? "One reading was" : `${aside} readings were`} likely typed in the wrong unit, such as
          ounces for pounds, and left out.
        </p>
      )}
    </Section>
  );
}
