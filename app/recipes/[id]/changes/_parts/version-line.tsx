import type { MaterialCost } from "#lib/packing/material-cost";
import { formatDay } from "#lib/units/day-text";
import type { Recipe } from "#prisma/records/recipes";
import type { Shop } from "#prisma/records/shop";
import { costWords } from "../../../cost-words";
import styles from "./changes.module.css";

type VersionLineProps = {
  readonly recipe: Recipe;
  readonly number: number;
  /** What it changed against the one before; null for the first. */
  readonly changes: readonly string[] | null;
  /** One piece in its parcel at the prices of its first day, and at today's. */
  readonly costThen: MaterialCost;
  readonly costNow: MaterialCost;
  readonly parcels: number;
  readonly shop: Shop;
};

/** One version of a card on its time line. */
export function VersionLine({ recipe, number, changes, costThen, costNow, parcels, shop }: VersionLineProps) {
  const packed = parcels === 1 ? "One parcel was" : `${parcels === 0 ? "No" : parcels} parcels were`;
  return (
    <li className={styles.version}>
      <h3 className={styles.since}>
        Since {formatDay(recipe.effectiveFrom, { year: true })}, version {number}
        {recipe.commonPractice ? ", not from your own figures" : ""}
      </h3>
      {changes === null ? (
        <p>The first card: {recipe.steps.length} steps.</p>
      ) : (
        <ul className={styles.changed}>
          {(changes.length === 0 ? ["Nothing changed but its day or note."] : changes).map((words) => (
            <li key={words}>{words}</li>
          ))}
        </ul>
      )}
      <p className={styles.small}>
        Material of one piece: {costWords(costThen, shop)} at the prices on offer that day,{" "}
        {costWords(costNow, shop)} today. {packed} packed by it.
        {recipe.note === null ? "" : ` ${recipe.note}`}
      </p>
    </li>
  );
}
