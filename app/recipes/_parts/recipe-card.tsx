import Link from "next/link";
import { formatAmount } from "#lib/units/amount-text";
import { type Day, day } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import type { Recipe } from "#prisma/records/recipes";
import type { Supply } from "#prisma/records/supplies";
import { Section } from "../../_parts/section";
import { cartonWords } from "../carton-words";
import { styleTitle } from "../style-title";
import styles from "./recipe-card.module.css";

type RecipeCardProps = {
  readonly recipe: Recipe;
  readonly supplies: ReadonlyMap<string, Supply>;
  readonly today: Day;
  readonly versions: number;
  /** What one parcel by it weighs and costs, and the other styles against it. */
  readonly sums: string;
  readonly compared: string;
};

const ESTIMATE = "An estimate: it does not certify that a package protects its contents. Send a test parcel.";

/** A recipe as a packing card: the steps in the order of the work, with fractions as the packer says them. */
export function RecipeCard({ recipe, supplies, today, versions, sums, compared }: RecipeCardProps) {
  const since = formatDay(day(recipe.effectiveFrom), { year: true });
  const from = recipe.effectiveFrom > today ? `from ${since} on` : `since ${since}`;
  const nameOf = (supplyId: string) => supplies.get(supplyId)?.name ?? supplyId;
  return (
    <Section
      title={styleTitle(recipe.style)}
      id={recipe.style}
      rule="strong"
      aside={`${from}${versions > 1 ? `, version ${versions}` : ""}${recipe.commonPractice ? ". Common practice, not your own figures yet" : ""}.`}
    >
      <ol className={styles.steps}>
        {recipe.steps.map((step, index) => (
          <li key={step.id} className={styles.step}>
            <span className={styles.number}>{index + 1}</span>
            <span>
              {step.words}
              <span className={styles.supply}>
                <Link href={`/supplies/${step.supplyId}`}>{nameOf(step.supplyId)}</Link>
                {step.per === "parcel" ? ", once a parcel" : ", each piece"}
              </span>
            </span>
            <span className={styles.amount}>
              {formatAmount(step.amount, supplies.get(step.supplyId)?.useUnit ?? "each")}
            </span>
          </li>
        ))}
      </ol>
      <p>{cartonWords(recipe.cartons, nameOf)}</p>
      <p>
        {sums} {compared}
      </p>
      {recipe.note === null ? null : <p className={styles.note}>{recipe.note}</p>}
      <p className={styles.note}>{ESTIMATE}</p>
      <p className={styles.links}>
        <Link href={`/recipes/${recipe.itemTypeId}/edit?style=${recipe.style}`} className={styles.change}>
          Change the {recipe.style} card from a day on
        </Link>{" "}
        <Link href={`/recipes/${recipe.itemTypeId}/card?style=${recipe.style}`} className={styles.change}>
          Print it
        </Link>{" "}
        {versions > 1 ? (
          <Link href={`/recipes/${recipe.itemTypeId}/changes#${recipe.style}`} className={styles.change}>
            What changed since the first
          </Link>
        ) : null}
      </p>
    </Section>
  );
}
