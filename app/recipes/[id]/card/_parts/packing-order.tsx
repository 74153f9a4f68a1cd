import { formatAmount } from "#lib/units/amount-text";
import type { Recipe } from "#prisma/records/recipes";
import type { Supply } from "#prisma/records/supplies";
import { cartonWords } from "../../../carton-words";
import styles from "./packing-order.module.css";

type PackingOrderProps = { readonly recipe: Recipe; readonly supplies: ReadonlyMap<string, Supply> };

/** The steps with large amounts, what is taken for each piece apart from what is taken once; then the carton. */
export function PackingOrder({ recipe, supplies }: PackingOrderProps) {
  const nameOf = (supplyId: string) => supplies.get(supplyId)?.name ?? supplyId;
  const parts = [
    { per: "piece", title: "For each piece" },
    { per: "parcel", title: "Once a parcel" },
  ] as const;
  return (
    <div className={styles.card}>
      {parts.map(({ per, title }) => {
        const steps = recipe.steps.filter((step) => step.per === per);
        return steps.length === 0 ? null : (
          <section key={per}>
            <h2 className={styles.part}>{title}</h2>
            <ol className={styles.steps}>
              {steps.map((step) => (
                <li key={step.id} className={styles.step}>
                  <span className={styles.amount}>
                    {formatAmount(step.amount, supplies.get(step.supplyId)?.useUnit ?? "each")}
                  </span>
                  <span>
                    {step.words} <span className={styles.supply}>{nameOf(step.supplyId)}</span>
                  </span>
                </li>
              ))}
            </ol>
          </section>
        );
      })}
      <p className={styles.carton}>{cartonWords(recipe.cartons, nameOf)}</p>
      <p className={styles.caution}>
        Close, shake, and add where anything moves. Cut away from you and the goods; lift with help over 50 lb
        (23 kg). An estimate: it does not certify that a package protects its contents.
      </p>
    </div>
  );
}
